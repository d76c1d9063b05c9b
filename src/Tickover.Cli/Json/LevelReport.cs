namespace Tickover.Cli.Json;

/// <summary>What <c>tickover level --json</c> prints.</summary>
internal sealed record LevelReport
{
    /// <summary>Name and number of the form.</summary>
    public string Schema { get; init; } = "tickover/level/1";

    /// <summary>Name of the sheet.</summary>
    public required string Name { get; init; }

    /// <summary>The fuel.</summary>
    public required string Fuel { get; init; }

    /// <summary>Its density, kg/m³.</summary>
    public required double Density { get; init; }

    /// <summary>The verdict in a line.</summary>
    public required string Verdict { get; init; }

    /// <summary>Level the set is held against, mm below the lid.</summary>
    public required double Target { get; init; }

    /// <summary>How far levels may differ, mm.</summary>
    public required double Limit { get; init; }

    /// <summary>Highest from lowest, mm.</summary>
    public required double? Spread { get; init; }

    /// <summary>Each carburettor.</summary>
    public required IReadOnlyList<LevelReportLine> Carburettors { get; init; }

    /// <summary>What a millimetre more does to the mixture.</summary>
    public required IReadOnlyList<LevelReportMixture> Mixture { get; init; }
}
