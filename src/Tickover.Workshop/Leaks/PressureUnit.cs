namespace Tickover.Workshop.Leaks;

/// <summary>A unit workshops read low pressures in.</summary>
/// <param name="Name">As written.</param>
/// <param name="Pascals">One of it, Pa.</param>
public sealed record PressureUnit(string Name, double Pascals)
{
    /// <summary>As people read it on an axis or in a table.</summary>
    public string Words => Name switch
    {
        "mmH2O" => "mm of water",
        "inH2O" => "inches of water",
        "mmHg" => "mm of mercury",
        "inHg" => "inches of mercury",
        _ => Name,
    };

    /// <summary>All units known, by the conversions of UnitsNet.</summary>
    public static IReadOnlyList<PressureUnit> All { get; } =
    [
        new("mbar", UnitsNet.Pressure.FromMillibars(1).Pascals),
        new("hPa", UnitsNet.Pressure.FromHectopascals(1).Pascals),
        new("Pa", 1),
        new("kPa", UnitsNet.Pressure.FromKilopascals(1).Pascals),
        new("bar", UnitsNet.Pressure.FromBars(1).Pascals),
        new("psi", UnitsNet.Pressure.FromPoundsForcePerSquareInch(1).Pascals),
        new("mmH2O", UnitsNet.Pressure.FromMetersOfWaterColumn(1).Pascals / 1000),
        new("inH2O", UnitsNet.Pressure.FromInchesOfWaterColumn(1).Pascals),
        new("mmHg", UnitsNet.Pressure.FromMillimetersOfMercury(1).Pascals),
        new("inHg", UnitsNet.Pressure.FromInchesOfMercury(1).Pascals),
    ];

    /// <summary>The unit of a name.</summary>
    /// <param name="name">As written, capitals as they come.</param>
    /// <returns>The unit; null where it is not known.</returns>
    public static PressureUnit? Read(string name) => All.FirstOrDefault(u => string.Equals(u.Name, name, StringComparison.OrdinalIgnoreCase));
}
