namespace Tickover.Cli.Json;

/// <summary>One part of the line at work in a <see cref="SupplyReportCase"/>.</summary>
internal sealed record SupplyReportPart
{
    public required string Name { get; init; }

    public required string Kind { get; init; }

    public required double LitresPerHour { get; init; }

    /// <summary>What it takes without its rise, bar; below zero where it adds.</summary>
    public required double TakesBar { get; init; }

    /// <summary>What a gauge behind it reads, bar against the air; before the seat at a float valve.</summary>
    public required double GaugeBar { get; init; }

    /// <summary>Pressure above boiling there, bar; below zero where it boils.</summary>
    public required double AboveBoilingBar { get; init; }

    /// <summary>Fuel behind it, °C.</summary>
    public required double Celsius { get; init; }
}
