namespace Tickover.Cli.Json;

/// <summary>What <c>gauge --json</c> prints; its form is docs/schemas/gauge.schema.json.</summary>
internal sealed record GaugeReport
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/gauge/1";

    public required string Gauge { get; init; }

    public required string Road { get; init; }

    public required double CapacityLitres { get; init; }

    public required IReadOnlyList<GaugeReportMoment> Course { get; init; }

    public required IReadOnlyList<GaugeReportRemedy> Remedies { get; init; }

    public required IReadOnlyList<GaugeReportAdvice> Advice { get; init; }

    /// <summary>Whether the surface stayed within the slopes the model is meant for.</summary>
    public required bool Inside { get; init; }
}
