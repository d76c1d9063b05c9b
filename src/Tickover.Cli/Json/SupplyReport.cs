namespace Tickover.Cli.Json;

/// <summary>What <c>supply --json</c> prints; its form is docs/schemas/supply.schema.json.</summary>
internal sealed record SupplyReport
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/supply/1";

    public required string Supply { get; init; }

    /// <summary>Whether the engine is fed and nothing else is short, in every case.</summary>
    public required bool Carries { get; init; }

    public required string Verdict { get; init; }

    /// <summary>How the full-load demand was come by.</summary>
    public required string Demand { get; init; }

    /// <summary>How the idle demand was come by.</summary>
    public required string IdleDemand { get; init; }

    /// <summary>How both were worked out; empty where the document says them or the power.</summary>
    public required IReadOnlyList<SupplyReportStep> DemandWorking { get; init; }

    public required string Fuel { get; init; }

    public required IReadOnlyList<SupplyReportCase> Cases { get; init; }

    public required IReadOnlyList<SupplyReportFinding> Findings { get; init; }

    /// <summary>Flow out of the last float valve's open line, l/min; null without a pump.</summary>
    public double? OpenFlowLitresPerMinute { get; init; }

    /// <summary>What the readings say; null where there are none.</summary>
    public SupplyReportDiagnosis? Diagnosis { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }
}
