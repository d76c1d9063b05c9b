namespace Tickover.Physics.Inspection;

/// <summary>What the readings of a flow bench are good to: one standard deviation of each.</summary>
public sealed record BenchDeviations
{
    /// <summary>Volume, as a part of it.</summary>
    public double VolumePart { get; init; } = 0.005;

    /// <summary>Time, s: a finger on a watch, twice.</summary>
    public double Seconds { get; init; } = 0.2;

    /// <summary>Head, m.</summary>
    public double HeadMetres { get; init; } = 0.001;

    /// <summary>Temperature of the liquid, K.</summary>
    public double Kelvin { get; init; } = 1;

    /// <summary>Length of the bore over its diameter, 1.</summary>
    public double LengthRatio { get; init; } = 1;

    /// <summary>Coefficient of discharge, as a part of it: edges and finish are not those of the formula.</summary>
    public double DischargePart { get; init; } = 0.015;
}
