namespace Tickover.Physics.Gauges;

/// <summary>The arm of a sender: a float on a lever that turns a wiper. docs/physics/gauges.md (5), (6).</summary>
public sealed record FloatArm
{
    /// <summary>Height of the pivot above the foot of the dip stick, m.</summary>
    public required double PivotMetres { get; init; }

    /// <summary>From the pivot to the middle of the float, m; above zero.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Dip at which the arm meets its lower stop, m.</summary>
    public required double LowStopMetres { get; init; }

    /// <summary>Dip at which it meets its upper stop, m; above the lower.</summary>
    public required double HighStopMetres { get; init; }

    /// <summary>Angle of the arm from level at a dip, without stops.</summary>
    /// <param name="dip">m.</param>
    /// <returns>Radians, up is above zero; the arm stands upright beyond its reach.</returns>
    public double AngleAt(double dip) => Math.Asin(Math.Clamp((dip - PivotMetres) / LengthMetres, -1, 1)); // gauges (5)

    /// <summary>Part of the wiper's way at a dip.</summary>
    /// <param name="dip">m.</param>
    /// <returns>0 at the lower stop, 1 at the upper.</returns>
    public double TravelAt(double dip)
    {
        var (low, high) = (AngleAt(LowStopMetres), AngleAt(HighStopMetres));
        return Math.Clamp((AngleAt(dip) - low) / (high - low), 0, 1); // gauges (6)
    }
}
