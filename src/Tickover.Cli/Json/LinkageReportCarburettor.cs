namespace Tickover.Cli.Json;

/// <summary>One carburettor of a <see cref="LinkageReport"/>; degrees, and air as a part.</summary>
internal sealed record LinkageReportCarburettor
{
    public required string Name { get; init; }

    public required double HeldOffDegrees { get; init; }

    public required double FullDegrees { get; init; }

    public required double ReachedDegrees { get; init; }

    public required double ShortByDegrees { get; init; }

    /// <summary>Either way against the others, with the pedal up.</summary>
    public required double PlayDegrees { get; init; }

    public required double PlayPart { get; init; }

    /// <summary>Largest over the travel.</summary>
    public required double WindUpDegrees { get; init; }

    /// <summary>Null where nothing is said of warmth.</summary>
    public double? WarmIdleDegrees { get; init; }

    public double? WarmQuarterDegrees { get; init; }

    public double? WarmIdlePart { get; init; }
}
