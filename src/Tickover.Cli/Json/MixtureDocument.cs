namespace Tickover.Cli.Json;

/// <summary>What <c>mixture --json</c> prints; its form is docs/schemas/mixture.schema.json.</summary>
internal sealed record MixtureDocument
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/mixture/1";

    /// <summary>The car's name.</summary>
    public required string Car { get; init; }

    /// <summary>Fuel grade.</summary>
    public required string Fuel { get; init; }

    /// <summary>Mass of air that just burns one mass of the fuel, 1.</summary>
    public required double StoichiometricRatio { get; init; }

    /// <summary>Half width of the band on every ratio as a part of it, 1.</summary>
    public required double RelativeBand { get; init; }

    /// <summary>The day and the place.</summary>
    public required IReadOnlyList<FigureLine> Ambient { get; init; }

    /// <summary>Speeds, rpm.</summary>
    public required IReadOnlyList<double> SpeedsRpm { get; init; }

    /// <summary>Openings from seated, degrees.</summary>
    public required IReadOnlyList<double> ThrottleDegrees { get; init; }

    /// <summary>The car as it is described.</summary>
    public required IReadOnlyList<MixtureBarrels> Fitted { get; init; }

    /// <summary>Changes tried; empty where there is no trial.</summary>
    public required IReadOnlyList<TriedChange> Changes { get; init; }

    /// <summary>The car with the changes; empty where there is no trial.</summary>
    public required IReadOnlyList<MixtureBarrels> Trial { get; init; }
}
