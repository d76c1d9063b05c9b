namespace Tickover.Workshop.Mixture;

/// <summary>The working at one speed and throttle of one barrel.</summary>
public sealed record PointWorking
{
    /// <summary>Barrel number from 1.</summary>
    public required int BarrelNumber { get; init; }

    /// <summary>Engine speed, rpm.</summary>
    public required double SpeedRpm { get; init; }

    /// <summary>Plate opening from seated, degrees.</summary>
    public required double ThrottleDegrees { get; init; }

    /// <summary>The computed point.</summary>
    public required BarrelPoint Point { get; init; }

    /// <summary>Half width of the band on the ratio as a part of it, 1.</summary>
    public required double RelativeBand { get; init; }

    /// <summary>The target here.</summary>
    public required LambdaBand Target { get; init; }

    /// <summary>The steps in order, from the air to λ.</summary>
    public required IReadOnlyList<WorkingStep> Steps { get; init; }
}
