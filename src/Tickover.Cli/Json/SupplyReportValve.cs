namespace Tickover.Cli.Json;

/// <summary>One float valve in a <see cref="SupplyReportCase"/>.</summary>
internal sealed record SupplyReportValve
{
    public required string Name { get; init; }

    public required double WantedLitresPerHour { get; init; }

    public required double ComesLitresPerHour { get; init; }

    public required double PressureBar { get; init; }

    public required double FloodsAtBar { get; init; }

    /// <summary>Level against the level set, mm; null where it falls on.</summary>
    public double? LevelMillimetres { get; init; }

    /// <summary>Until its jets draw air, s; null where enough comes.</summary>
    public double? RunsDrySeconds { get; init; }
}
