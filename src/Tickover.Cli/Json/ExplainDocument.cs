namespace Tickover.Cli.Json;

/// <summary>What <c>explain --json</c> prints; its form is docs/schemas/explain.schema.json.</summary>
internal sealed record ExplainDocument
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/explain/1";

    /// <summary>The car's name.</summary>
    public required string Car { get; init; }

    /// <summary>Barrel number from 1.</summary>
    public required int Barrel { get; init; }

    /// <summary>Half width of the band on the ratio as a part of it, 1.</summary>
    public required double RelativeBand { get; init; }

    /// <summary>What the target is for, such as "cruise".</summary>
    public required string Regime { get; init; }

    /// <summary>The computed point.</summary>
    public required MixturePoint Point { get; init; }

    /// <summary>The working, in order.</summary>
    public required IReadOnlyList<ExplainedStep> Steps { get; init; }
}
