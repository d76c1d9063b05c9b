namespace Tickover.Physics.Metering;

/// <summary>Parts of round holes that a level or an edge has passed: metering (6).</summary>
public static class HoleArea
{
    /// <summary>Area of the segment of a hole up to a height.</summary>
    /// <param name="diameter">Diameter of the hole, m.</param>
    /// <param name="passed">How far the edge has come across it, m; below zero nothing, above the diameter all.</param>
    /// <returns>Area passed, m².</returns>
    public static double Passed(double diameter, double passed)
    {
        var r = diameter / 2;
        if (passed <= 0)
        {
            return 0;
        }

        if (passed >= diameter)
        {
            return Math.PI * r * r;
        }

        var below = Math.Clamp((r - passed) / r, -1, 1);
        return r * r * Math.Acos(below) - (r - passed) * Math.Sqrt(passed * (diameter - passed));
    }
}
