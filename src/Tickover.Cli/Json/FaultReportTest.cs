namespace Tickover.Cli.Json;

/// <summary>The test to do next.</summary>
internal sealed record FaultReportTest
{
    public required string Key { get; init; }

    public required string Question { get; init; }

    public required IReadOnlyList<FaultReportAnswer> Answers { get; init; }

    public required string Why { get; init; }

    public required double Minutes { get; init; }

    /// <summary>0 nothing, 1 a part, 2 an assembly.</summary>
    public required int PartsOff { get; init; }

    public required double Bits { get; init; }

    /// <summary>What comes before it; empty where nothing of its own.</summary>
    public required IReadOnlyList<string> Caution { get; init; }

    public required string Origin { get; init; }

    public required string Confidence { get; init; }
}
