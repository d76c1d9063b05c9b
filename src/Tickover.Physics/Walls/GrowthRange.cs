namespace Tickover.Physics.Walls;

/// <summary>How pits may grow: depth as a power of age, between two powers and two ages. docs/physics/walls.md (19).</summary>
/// <remarks>
/// One power is never known: aluminium in fresh water follows the cube root (Godard 1960), pits held back by their own resistance the square root
/// (Hunkeler and Böhni 1984), a pad that never dries nearly a straight line, and long exposures follow no single power (Melchers 2015). So a range, always.
/// </remarks>
public sealed record GrowthRange
{
    /// <summary>Slowest growth usual.</summary>
    public const double UsualSlow = 0.3;

    /// <summary>Fastest growth usual.</summary>
    public const double UsualFast = 0.8;

    /// <summary>Smallest power, above 0.</summary>
    public double SlowExponent { get; init; } = UsualSlow;

    /// <summary>Largest power, 1 at most.</summary>
    public double FastExponent { get; init; } = UsualFast;

    /// <summary>Least the pits can have been growing, years; above zero.</summary>
    public required double YoungestYears { get; init; }

    /// <summary>Most they can have been growing, years; not below the least.</summary>
    public required double OldestYears { get; init; }

    /// <summary>How many times deeper pits get.</summary>
    /// <param name="years">From now, years; not negative.</param>
    /// <returns>At the slowest, in between, at the fastest.</returns>
    public (double Slow, double Middle, double Fast) Factors(double years)
    {
        Precondition.NotNegative(years);
        Precondition.Positive(YoungestYears);
        Precondition.Within(OldestYears, YoungestYears, double.MaxValue);
        Precondition.Within(FastExponent, SlowExponent, 1);
        return (
            Factor(Precondition.Positive(SlowExponent), OldestYears, years),
            Factor((SlowExponent + FastExponent) / 2, Math.Sqrt(YoungestYears * OldestYears), years),
            Factor(FastExponent, YoungestYears, years));
    }

    /// <summary>How many times deeper a pit gets by one power.</summary>
    /// <param name="exponent">The power, above 0.</param>
    /// <param name="ageYears">How long it has been growing, years; above zero.</param>
    /// <param name="years">From now, years; not negative.</param>
    /// <returns>1 and more.</returns>
    public static double Factor(double exponent, double ageYears, double years) =>
        Math.Pow(1 + Precondition.NotNegative(years) / Precondition.Positive(ageYears), Precondition.Positive(exponent)); // walls (19)

    /// <summary>Age at which a pit is through.</summary>
    /// <param name="wallMetres">Wall, m; above zero.</param>
    /// <param name="depthMetres">Depth now, m; above zero.</param>
    /// <param name="exponent">The power, above 0.</param>
    /// <param name="ageYears">Age now, years; above zero.</param>
    /// <returns>Years from the beginning.</returns>
    public static double AgeWhenThrough(double wallMetres, double depthMetres, double exponent, double ageYears) =>
        Precondition.Positive(ageYears) * Math.Pow(Precondition.Positive(wallMetres) / Precondition.Positive(depthMetres), 1 / Precondition.Positive(exponent)); // walls (19)
}
