namespace Tickover.Cli.Json;

/// <summary>One zone, in a <see cref="WallReport"/>; depths in mm.</summary>
internal sealed record WallReportZone
{
    /// <summary>Pad or Open.</summary>
    public required string Kind { get; init; }

    public required double AreaSquareCentimetres { get; init; }

    public required int Read { get; init; }

    /// <summary>How many patches of the size of one reading were not read.</summary>
    public required double PatchesNotRead { get; init; }

    public string? DeepestCell { get; init; }

    public double? DeepestReadMillimetres { get; init; }

    /// <summary>Deepest pit not read: 5, 50 and 95 %.</summary>
    public IReadOnlyList<double>? UnseenMillimetres { get; init; }

    /// <summary>Chance of a hole now: low, middle, high.</summary>
    public IReadOnlyList<double>? HoleNow { get; init; }

    /// <summary>Inside, Extrapolated or Outside.</summary>
    public required string Validity { get; init; }

    /// <summary>Depths wanting for an estimate.</summary>
    public required int Wanting { get; init; }
}
