namespace Tickover.Physics.Sending;

/// <summary>A float on a swinging arm. docs/physics/sending.md (14), (15).</summary>
public sealed record FloatArm
{
    /// <summary>Pivot above the tank's floor, m.</summary>
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
    /// <param name="pivotMetres">Pivot above the floor, m.</param>
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
    /// <param name="levelMetres">Fuel where the float is, above the floor, m.</param>
    /// <returns>From the level, rad; ±π/2 beyond the arm's reach.</returns>
    public double AngleAt(double levelMetres) =>
        Math.Asin(Math.Clamp((levelMetres + RidesMetres - PivotMetres) / LengthMetres, -1, 1)); // sending (14)

    /// <summary>How far the arm has gone from the lower stop to the upper one.</summary>
    /// <param name="levelMetres">Fuel where the float is, above the floor, m.</param>
    /// <returns>0 to 1.</returns>
    public double TravelAt(double levelMetres)
    {
        var angle = Math.Clamp(AngleAt(levelMetres), LowStopRadians, HighStopRadians);
        var travel = (angle - LowStopRadians) / (HighStopRadians - LowStopRadians); // sending (15)
        return Reversed ? 1 - travel : travel;
    }
}
