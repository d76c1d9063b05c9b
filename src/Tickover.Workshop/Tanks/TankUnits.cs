using UnitsNet;

namespace Tickover.Workshop.Tanks;

/// <summary>The border between what is measured on a tank, mm and litres, and the physics' metres.</summary>
internal static class TankUnits
{
    public static double LitresPerCubicMetre { get; } = Volume.FromCubicMeters(1).Liters;

    public static double MillimetresPerMetre { get; } = Length.FromMeters(1).Millimeters;

    // By factor, not by quantity: a figure that is missing is NaN until all faults are told, and a quantity refuses NaN.
    public static double CubicMetres(double litres) => litres / LitresPerCubicMetre;

    public static double Litres(double cubicMetres) => cubicMetres * LitresPerCubicMetre;

    public static double Metres(double millimetres) => millimetres / MillimetresPerMetre;

    public static double Millimetres(double metres) => metres * MillimetresPerMetre;
}
