using Tickover.Physics.Air;

namespace Tickover.Physics.Sending;

/// <summary>How long two tanks take to level, by the textbook's formulas without inertia.</summary>
public static class Levelling
{
    private const double Gravity = AirConstants.StandardGravityMetresPerSecondSquared;

    /// <summary>Time for a turbulent pipe or an orifice, s.</summary>
    /// <param name="areas">Plan areas of both tanks, m².</param>
    /// <param name="heads">Difference of levels at the start and at the end, m.</param>
    /// <param name="opening">Area of the pipe or the hole, m².</param>
    /// <param name="heads2">Loss in heads of the speed: the sum of K, exit included, and f L/D; 1/Cd² for an orifice.</param>
    /// <returns>s.</returns>
    public static double Turbulent((double First, double Second) areas, (double Start, double End) heads, double opening, double heads2)
    {
        var common = areas.First * areas.Second / (areas.First + areas.Second);
        return 2 * common * (Math.Sqrt(heads.Start) - Math.Sqrt(heads.End)) / (Precondition.Positive(opening) * Math.Sqrt(2 * Gravity / Precondition.Positive(heads2))); // sending (20)
    }

    /// <summary>Time constant of a laminar pipe, s.</summary>
    /// <param name="areas">Plan areas of both tanks, m².</param>
    /// <param name="pipe">The pipe.</param>
    /// <param name="kinematicViscosity">m²/s.</param>
    /// <returns>s.</returns>
    public static double LaminarTimeConstant((double First, double Second) areas, CrossPipe pipe, double kinematicViscosity)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        var common = areas.First * areas.Second / (areas.First + areas.Second);
        return 128 * kinematicViscosity * pipe.LengthMetres * common / (Math.PI * Gravity * Math.Pow(pipe.BoreMetres, 4)); // sending (21)
    }
}
