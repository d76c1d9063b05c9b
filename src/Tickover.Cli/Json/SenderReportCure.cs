namespace Tickover.Cli.Json;

/// <summary>One cure in a <see cref="SenderReport"/>.</summary>
internal sealed record SenderReportCure
{
    /// <summary>AsItIs, Series, Parallel, Bend or Both.</summary>
    public required string Kind { get; init; }

    public required string What { get; init; }

    public required bool Advised { get; init; }

    public required double SeriesOhms { get; init; }

    public double? ParallelOhms { get; init; }

    public required double BendDegrees { get; init; }

    /// <summary>Root mean square of the error, of the full scale.</summary>
    public required double AveragePart { get; init; }

    public required double WorstPart { get; init; }

    public required IReadOnlyList<SenderReportPoint> Scale { get; init; }
}
