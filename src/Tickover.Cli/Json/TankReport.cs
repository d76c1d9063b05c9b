namespace Tickover.Cli.Json;

/// <summary>What <c>tank --json</c> prints; its form is docs/schemas/tank.schema.json.</summary>
internal sealed record TankReport
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/tank/1";

    public required string Name { get; init; }

    public required double CapacityLitres { get; init; }

    public required IReadOnlyList<TankReportTank> Tanks { get; init; }

    public required IReadOnlyList<TankReportLine> Table { get; init; }

    /// <summary>Whether the needle was read; else it follows from the families.</summary>
    public required bool NeedleRead { get; init; }

    public double? UnusableLitres { get; init; }

    public required IReadOnlyList<TankReportStance> Stances { get; init; }

    public TankReportFill? Fill { get; init; }

    public required IReadOnlyList<TankReportAdvice> Advice { get; init; }
}
