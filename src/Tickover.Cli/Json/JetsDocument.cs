namespace Tickover.Cli.Json;

/// <summary>What <c>jets --json</c> prints; its form is docs/schemas/jets.schema.json.</summary>
internal sealed record JetsDocument
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/jets/1";

    /// <summary>The car's name.</summary>
    public required string Car { get; init; }

    /// <summary>Readings it rests on; zero for the description alone.</summary>
    public required int Readings { get; init; }

    /// <summary>Sets tried.</summary>
    public required long SetsTried { get; init; }

    /// <summary>Root mean square error of the quick reckoning of the best set as a part of λ, 1.</summary>
    public required double QuickReckoning { get; init; }

    /// <summary>Speeds, rpm.</summary>
    public required IReadOnlyList<double> SpeedsRpm { get; init; }

    /// <summary>Openings from seated, degrees.</summary>
    public required IReadOnlyList<double> ThrottleDegrees { get; init; }

    /// <summary>What is fitted, and the proposals.</summary>
    public required IReadOnlyList<ProposedJets> Proposals { get; init; }
}
