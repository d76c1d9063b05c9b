using Tickover.Physics.Flow;

namespace Tickover.Physics.Tanks;

/// <summary>The textbooks' formulas for round tanks that stand level, to hold the facets against. docs/physics/tanks.md (14) to (17).</summary>
public static class PartialVolumes
{
    /// <summary>A lying cylinder with flat ends.</summary>
    /// <param name="diameter">m.</param>
    /// <param name="length">m.</param>
    /// <param name="depth">Depth of the fuel, m; 0 to the diameter.</param>
    /// <returns>m³.</returns>
    public static double LyingCylinder(double diameter, double length, double depth)
    {
        Precondition.Within(depth, 0, Precondition.Positive(diameter));
        return Precondition.NotNegative(length) * Circle.SegmentArea(diameter, depth); // tanks (14)
    }

    /// <summary>Both ends of a lying cylinder, each half an ellipse turned about the axis.</summary>
    /// <param name="diameter">m.</param>
    /// <param name="head">How far each bulges, m.</param>
    /// <param name="depth">Depth of the fuel, m; 0 to the diameter.</param>
    /// <returns>m³, of the two together.</returns>
    public static double LyingEllipseHeads(double diameter, double head, double depth)
    {
        var radius = Precondition.Positive(diameter) / 2;
        return Precondition.NotNegative(head) / radius * BallCap(radius, depth); // tanks (15)
    }

    /// <summary>The part of a ball below a level.</summary>
    /// <param name="radius">m.</param>
    /// <param name="depth">Depth of the fuel, m; 0 to twice the radius.</param>
    /// <returns>m³.</returns>
    public static double BallCap(double radius, double depth)
    {
        Precondition.Within(depth, 0, 2 * Precondition.Positive(radius));
        return Math.PI * depth * depth * (3 * radius - depth) / 3; // tanks (16)
    }

    /// <summary>The part of a unit cube below the plane x + y + z = t.</summary>
    /// <param name="t">0 to 3.</param>
    /// <returns>Part of the cube, 0 to 1.</returns>
    public static double CubeCorner(double t)
    {
        Precondition.Within(t, 0, 3);
        static double Cubed(double x) => x > 0 ? x * x * x : 0;
        return (Cubed(t) - 3 * Cubed(t - 1) + 3 * Cubed(t - 2)) / 6; // tanks (17)
    }
}
