namespace Tickover.Cli.Json;

/// <summary>What <c>tickover wear --json</c> prints.</summary>
internal sealed record WearReport
{
    /// <summary>Name and number of the form.</summary>
    public string Schema { get; init; } = "tickover/wear/1";

    /// <summary>Name of the sheet.</summary>
    public required string Name { get; init; }

    /// <summary>The verdict in a line.</summary>
    public required string Verdict { get; init; }

    /// <summary>The engine at idle.</summary>
    public required WearReportIdle Idle { get; init; }

    /// <summary>Each barrel in engine order.</summary>
    public required IReadOnlyList<WearReportBarrel> Barrels { get; init; }

    /// <summary>Everything judged, the worst first.</summary>
    public required IReadOnlyList<WearReportItem> Items { get; init; }
}
