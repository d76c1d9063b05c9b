namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>How a quantity is shown where a measure does not say otherwise.</summary>
/// <param name="Si">SI unit.</param>
/// <param name="Metric">Metric unit.</param>
/// <param name="Decimals">Decimals in it.</param>
/// <param name="Imperial">Imperial unit.</param>
/// <param name="ImperialDecimals">Decimals in it.</param>
internal sealed record QuantityForm(string Si, string Metric, int Decimals, string Imperial, int ImperialDecimals)
{
    private static readonly Dictionary<Quantity, QuantityForm> Table = new()
    {
        [Quantity.Airflow] = new("kg/s", "kg/h", 1, "lb/h", 1),
        [Quantity.Pressure] = new("Pa", "bar", 2, "psi", 1),
        [Quantity.AirPressure] = new("Pa", "hPa", 0, "inHg", 1),
        [Quantity.Depression] = new("Pa", "kPa", 1, "inHg", 1),
        [Quantity.Length] = new("m", "mm", 1, "in", 3),
        [Quantity.Distance] = new("m", "km", 0, "miles", 0),
        [Quantity.Volume] = new("m³", "L", 0, "gal", 1),
        [Quantity.VolumeFlow] = new("m³/s", "L/h", 0, "gal/h", 1),
        [Quantity.Temperature] = new("K", "°C", 0, "°F", 0),
        [Quantity.Resistance] = new("Ω", "Ω", 1, "Ω", 1),
        [Quantity.Voltage] = new("V", "V", 1, "V", 1),
        [Quantity.Duration] = new("s", "s", 0, "s", 0),
        [Quantity.Mass] = new("kg", "g", 1, "oz", 2),
        [Quantity.Force] = new("N", "N", 0, "lbf", 1),
        [Quantity.Torque] = new("N m", "N m", 0, "lbf ft", 0),
        [Quantity.Angle] = new("rad", "°", 0, "°", 0),
        [Quantity.EngineSpeed] = new("rad/s", "rpm", -1, "rpm", -1),
        [Quantity.Percent] = new("1", "%", 0, "%", 0),
        [Quantity.Lambda] = new("1", "", 2, "", 2),
        [Quantity.GasPercent] = new("1", "%", 1, "%", 1),
        [Quantity.PartsPerMillion] = new("1", "ppm", 0, "ppm", 0),
        [Quantity.Turns] = new("1", "turns", 3, "turns", 3),
        [Quantity.JetNumber] = new("m", "", 1, "", 1),
        [Quantity.Count] = new("1", "", 0, "", 0),
        [Quantity.GaugeScale] = new("1", "", 2, "", 2),
        [Quantity.Words] = new("", "", 0, "", 0),
        [Quantity.Choice] = new("", "", 0, "", 0),
    };

    /// <summary>The form of a quantity.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <returns>The form.</returns>
    public static QuantityForm Of(Quantity quantity) => Table[quantity];
}
