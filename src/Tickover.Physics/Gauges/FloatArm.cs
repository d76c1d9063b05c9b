namespace Tickover.Physics.Gauges;

/// <summary>A float on a swinging arm that turns a wiper. docs/physics/gauges.md (5), (6); on the march docs/physics/sending.md (14), (15).</summary>
public sealed record FloatArm
{
    /// <summary>Pivot above the place that levels are measured from, the tank's floor or the foot of the dip stick, m.</summary>
    public required double PivotMetres { get; init; }

    /// <summary>Pivot to the middle of the float, m; above zero.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Angle of the lower stop from the level, rad; −π/2 to π/2, where the resistance of an empty tank is reached.</summary>
    public required double LowStopRadians { get; init; }

    /// <summary>Angle of the upper stop, rad; above the lower one.</summary>
    public required double HighStopRadians { get; init; }

    /// <summary>Middle of the float above (below zero: under) the surface it floats in, m. A float that has taken fuel in lies deeper.</summary>
    public double RidesMetres { get; init; }

    /// <summary>Put in the wrong way round: the arm's travel runs backwards.</summary>
    public bool Reversed { get; init; }

    /// <summary>An arm whose stops are reached at two levels.</summary>
    /// <param name="pivotMetres">Pivot, m, measured as the levels are.</param>
    /// <param name="lengthMetres">Arm, m.</param>
    /// <param name="lowMetres">Level at the lower stop, m; within the arm's reach.</param>
    /// <param name="highMetres">Level at the upper stop, m; within the arm's reach.</param>
    /// <returns>The arm.</returns>
    public static FloatArm Between(double pivotMetres, double lengthMetres, double lowMetres, double highMetres) => new()
    {
        PivotMetres = pivotMetres,
        LengthMetres = Precondition.Positive(lengthMetres),
        LowStopRadians = Math.Asin(Precondition.Within((lowMetres - pivotMetres) / lengthMetres, -1, 1)),
        HighStopRadians = Math.Asin(Precondition.Within((highMetres - pivotMetres) / lengthMetres, -1, 1)),
    };

    /// <summary>Angle of the arm at a level, without stops.</summary>
    /// <param name="levelMetres">Fuel where the float is, m, measured as the pivot is.</param>
    /// <returns>From the level, rad; ±π/2 beyond the arm's reach.</returns>
    public double AngleAt(double levelMetres) =>
        Math.Asin(Math.Clamp((levelMetres + RidesMetres - PivotMetres) / LengthMetres, -1, 1)); // gauges (5)

    /// <summary>How far the arm has gone from the lower stop to the upper one.</summary>
    /// <param name="levelMetres">Fuel where the float is, m, measured as the pivot is.</param>
    /// <returns>0 to 1.</returns>
    public double TravelAt(double levelMetres)
    {
        var angle = Math.Clamp(AngleAt(levelMetres), LowStopRadians, HighStopRadians);
        var travel = (angle - LowStopRadians) / (HighStopRadians - LowStopRadians); // gauges (6)
        return Reversed ? 1 - travel : travel;
    }
}
