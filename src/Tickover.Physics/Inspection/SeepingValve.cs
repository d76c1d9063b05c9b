using Tickover.Physics.Flow;

namespace Tickover.Physics.Inspection;

/// <summary>A needle that does not quite shut: what seeps past it, and past which hole that would be as much.</summary>
public static class SeepingValve
{
    private const double Gravity = 9.80665;
    private const double SharpEdged = 0.62;                 // thin sharp-edged orifice, textbook

    /// <summary>Flow by drops counted.</summary>
    /// <param name="drops">How many; not negative.</param>
    /// <param name="seconds">In which time, s; above zero.</param>
    /// <param name="dropCubicMetres">Volume of a drop, m³; above zero.</param>
    /// <returns>m³/s.</returns>
    public static double ByDrops(double drops, double seconds, double dropCubicMetres) => Precondition.NotNegative(drops) * dropCubicMetres / Precondition.Positive(seconds); // inspection (20)

    /// <summary>Flow by the fall of the surface in an upright tube.</summary>
    /// <param name="fallMetres">Fall, m; not negative.</param>
    /// <param name="seconds">In which time, s; above zero.</param>
    /// <param name="tubeMetres">Bore of the tube, m; above zero.</param>
    /// <returns>m³/s.</returns>
    public static double ByFall(double fallMetres, double seconds, double tubeMetres) => Precondition.NotNegative(fallMetres) * Circle.Area(Precondition.Positive(tubeMetres)) / Precondition.Positive(seconds); // inspection (21)

    /// <summary>Area of a sharp-edged hole that would pass as much under a head.</summary>
    /// <param name="volumeFlow">Flow, m³/s; not negative.</param>
    /// <param name="headMetres">Head, m; above zero.</param>
    /// <returns>m².</returns>
    public static double HoleArea(double volumeFlow, double headMetres) => Precondition.NotNegative(volumeFlow) / (SharpEdged * Math.Sqrt(2 * Gravity * Precondition.Positive(headMetres))); // inspection (22)

    /// <summary>What the same hole passes under another head.</summary>
    /// <param name="areaSquareMetres">Area, m²; not negative.</param>
    /// <param name="headMetres">Head, m; not negative.</param>
    /// <returns>m³/s.</returns>
    public static double Flow(double areaSquareMetres, double headMetres) => SharpEdged * areaSquareMetres * Math.Sqrt(2 * Gravity * headMetres); // inspection (22)
}
