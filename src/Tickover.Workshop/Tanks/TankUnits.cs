using UnitsNet;

namespace Tickover.Workshop.Tanks;

/// <summary>The border between what is measured on a tank, mm and litres, and the physics' metres.</summary>
internal static class TankUnits
{
    public static double LitresPerCubicMetre { get; } = Volume.FromCubicMeters(1).Liters;

    public static double MillimetresPerMetre { get; } = Length.FromMeters(1).Millimeters;

    public static double CubicMetres(double litres) => Volume.FromLiters(litres).CubicMeters;

    public static double Litres(double cubicMetres) => Volume.FromCubicMeters(cubicMetres).Liters;

    public static double Metres(double millimetres) => Length.FromMillimeters(millimetres).Meters;

    public static double Millimetres(double metres) => Length.FromMeters(metres).Millimeters;
}
