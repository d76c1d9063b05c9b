namespace Tickover.Cli.Json;

/// <summary>What <c>wall --json</c> prints; its form is docs/schemas/wall.schema.json.</summary>
internal sealed record WallReport
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/wall/1";

    public required string Wall { get; init; }

    public required string Metal { get; init; }

    public required double ThicknessMillimetres { get; init; }

    public required WallReportVerdict Verdict { get; init; }

    public required IReadOnlyList<WallReportZone> Zones { get; init; }

    public required IReadOnlyList<WallReportCell> Cells { get; init; }

    /// <summary>Chance of a hole anywhere over the years; empty where readings are too few.</summary>
    public required IReadOnlyList<WallReportYear> Course { get; init; }

    /// <summary>Mean loss, mm; null where pits were read by probe.</summary>
    public double? MeanLossMillimetres { get; init; }

    public required IReadOnlyList<WallReportCouple> Couples { get; init; }

    public required IReadOnlyList<string> Doubts { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }
}
