using UnitsNet;

namespace Tickover.Workshop.Supply;

/// <summary>Workshop units of a fuel line and SI, by UnitsNet.</summary>
public static class SupplyUnits
{
    /// <summary>The unit as written.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>"bar" or "psi".</returns>
    public static string Symbol(PressureUnit unit) => unit == PressureUnit.Psi ? "psi" : "bar";

    /// <summary>Pa from the document's unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="value">The pressure in it.</param>
    /// <returns>Pa.</returns>
    public static double ToPascals(PressureUnit unit, double value) =>
        Known(value, number => (unit == PressureUnit.Psi ? Pressure.FromPoundsForcePerSquareInch(number) : Pressure.FromBars(number)).Pascals);

    /// <summary>The document's unit from Pa.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="pascals">The pressure, Pa.</param>
    /// <returns>In the unit.</returns>
    public static double FromPascals(PressureUnit unit, double pascals) =>
        unit == PressureUnit.Psi ? Pressure.FromPascals(pascals).PoundsForcePerSquareInch : Pressure.FromPascals(pascals).Bars;

    /// <summary>m³/s from litres a minute.</summary>
    /// <param name="litresMinute">Litres a minute.</param>
    /// <returns>m³/s.</returns>
    public static double ToFlow(double litresMinute) =>
        Known(litresMinute, number => VolumeFlow.FromLitersPerMinute(number).CubicMetersPerSecond);

    /// <summary>Litres a minute from m³/s.</summary>
    /// <param name="flow">m³/s.</param>
    /// <returns>Litres a minute.</returns>
    public static double ToLitresMinute(double flow) => VolumeFlow.FromCubicMetersPerSecond(flow).LitersPerMinute;

    /// <summary>Litres an hour from m³/s.</summary>
    /// <param name="flow">m³/s.</param>
    /// <returns>Litres an hour.</returns>
    public static double ToLitresHour(double flow) => VolumeFlow.FromCubicMetersPerSecond(flow).LitersPerHour;

    /// <summary>m³/s from litres an hour.</summary>
    /// <param name="litresHour">Litres an hour.</param>
    /// <returns>m³/s.</returns>
    public static double FromLitresHour(double litresHour) => VolumeFlow.FromLitersPerHour(litresHour).CubicMetersPerSecond;

    /// <summary>K from °C.</summary>
    /// <param name="celsius">°C.</param>
    /// <returns>K.</returns>
    public static double ToKelvin(double celsius) => Temperature.FromDegreesCelsius(celsius).Kelvins;

    /// <summary>°C from K.</summary>
    /// <param name="kelvin">K.</param>
    /// <returns>°C.</returns>
    public static double ToCelsius(double kelvin) => Temperature.FromKelvins(kelvin).DegreesCelsius;

    /// <summary>m from mm.</summary>
    internal static double FromMillimetres(double millimetres) => Known(millimetres, number => Length.FromMillimeters(number).Meters);

    /// <summary>m from µm.</summary>
    internal static double FromMicrometres(double micrometres) => Length.FromMicrometers(micrometres).Meters;

    /// <summary>m² from cm².</summary>
    internal static double FromSquareCentimetres(double squareCentimetres) => Area.FromSquareCentimeters(squareCentimetres).SquareMeters;

    /// <summary>W from kW.</summary>
    internal static double FromKilowatts(double kilowatts) => (double)Power.FromKilowatts(kilowatts).Watts;

    // A figure that could not be read stays none: its fault is told, and reading goes on to find the others. UnitsNet takes numbers only.
    private static double Known(double value, Func<double, double> converted) => double.IsNaN(value) ? value : converted(value);
}
