namespace Tickover.Cli.Json;

/// <summary>One case in a <see cref="SupplyReport"/>.</summary>
internal sealed record SupplyReportCase
{
    /// <summary>Idle, FullLoad or Hot.</summary>
    public required string Case { get; init; }

    /// <summary>How many times the demand is carried; searched to 20.</summary>
    public required double CarriesTimes { get; init; }

    /// <summary>The float valve that would run short first; null where none did.</summary>
    public string? FirstToStarve { get; init; }

    /// <summary>How the search for the flows ended.</summary>
    public required string Ending { get; init; }

    public required IReadOnlyList<SupplyReportPart> Parts { get; init; }

    public required IReadOnlyList<SupplyReportValve> Valves { get; init; }
}
