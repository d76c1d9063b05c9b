namespace Tickover.Cli.Json;

/// <summary>What <c>tickover jet --json</c> prints.</summary>
internal sealed record JetBenchDocument
{
    /// <summary>Name and number of the form.</summary>
    public string Schema { get; init; } = "tickover/jet/1";

    /// <summary>Name of the sheet.</summary>
    public required string Name { get; init; }

    /// <summary>The liquid on the bench.</summary>
    public required string Liquid { get; init; }

    /// <summary>Limit of a set: how far the flow of a jet may be off its middle, as a part.</summary>
    public required double SetLimit { get; init; }

    /// <summary>Each jet in its order.</summary>
    public required IReadOnlyList<JetBenchLine> Jets { get; init; }

    /// <summary>Sets of the same part and stamp.</summary>
    public required IReadOnlyList<JetBenchSet> Sets { get; init; }
}
