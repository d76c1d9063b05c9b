using UnitsNet;

namespace Tickover.Workshop.Tanks;

/// <summary>The border between what is measured on a tank, mm and litres, and the physics' metres.</summary>
/// <remarks>What is no number stays so: a reader that found a fault goes on to find the others.</remarks>
public static class TankUnits
{
    /// <summary>Litres in a cubic metre.</summary>
    public static double LitresPerCubicMetre { get; } = Volume.FromCubicMeters(1).Liters;

    /// <summary>Millimetres in a metre.</summary>
    public static double MillimetresPerMetre { get; } = Length.FromMeters(1).Millimeters;

    /// <summary>Litres as the physics has them.</summary>
    /// <param name="litres">l.</param>
    /// <returns>m³.</returns>
    public static double CubicMetres(double litres) => litres / LitresPerCubicMetre;

    /// <summary>A volume of the physics as the workshop has it.</summary>
    /// <param name="cubicMetres">m³.</param>
    /// <returns>l.</returns>
    public static double Litres(double cubicMetres) => cubicMetres * LitresPerCubicMetre;

    /// <summary>Millimetres as the physics has them.</summary>
    /// <param name="millimetres">mm.</param>
    /// <returns>m.</returns>
    public static double Metres(double millimetres) => millimetres / MillimetresPerMetre;

    /// <summary>A length of the physics as the workshop has it.</summary>
    /// <param name="metres">m.</param>
    /// <returns>mm.</returns>
    public static double Millimetres(double metres) => metres * MillimetresPerMetre;
}
