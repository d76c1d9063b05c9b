namespace Tickover.Cli.Json;

/// <summary>What <c>fault --json</c> prints; its form is docs/schemas/fault.schema.json. Chances from 0 to 1.</summary>
internal sealed record FaultReport
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/fault/1";

    public required string Name { get; init; }

    /// <summary>Name and version of the knowledge.</summary>
    public required string Knowledge { get; init; }

    public required IReadOnlyList<FaultReportSymptom> Symptoms { get; init; }

    public required IReadOnlyList<string> RuledOut { get; init; }

    public required IReadOnlyList<FaultReportGiven> Answers { get; init; }

    /// <summary>Open, Found or Exhausted.</summary>
    public required string Standing { get; init; }

    public required string Heading { get; init; }

    public required IReadOnlyList<FaultReportRank> Ranking { get; init; }

    /// <summary>Chance that it is something the knowledge does not hold.</summary>
    public required double Other { get; init; }

    /// <summary>Chance that two or more causes are at work together.</summary>
    public required double Several { get; init; }

    public required double OpenBits { get; init; }

    public FaultReportTest? Next { get; init; }

    public required IReadOnlyList<string> Contradictions { get; init; }

    public required IReadOnlyList<string> Doubts { get; init; }
}
