namespace Tickover.Physics.Sending;

/// <summary>A stretch of a drawn road.</summary>
public sealed record RoadSegment
{
    /// <summary>Length, m; above zero where the car drives.</summary>
    public double LengthMetres { get; init; }

    /// <summary>Curvature, 1/m: one over the radius, above zero to the left, 0 straight.</summary>
    public double CurvatureToLeft { get; init; }

    /// <summary>Rise over level way; above zero uphill.</summary>
    public double Grade { get; init; }

    /// <summary>Rise of the road to the left over level width.</summary>
    public double Camber { get; init; }

    /// <summary>Speed the driver holds here, m/s; 0: stands.</summary>
    public double SpeedMetresPerSecond { get; init; }

    /// <summary>How long the car stands here, s, where the speed is 0.</summary>
    public double StandsSeconds { get; init; }
}
