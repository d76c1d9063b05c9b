using Tickover.Physics.Supply;

namespace Tickover.Workshop.Supply;

/// <summary>Everything a fuel supply says about itself.</summary>
public sealed record SupplyAnalysis
{
    /// <summary>The supply as described.</summary>
    public required FuelSupply Supply { get; init; }

    /// <summary>Idle, full load, hot.</summary>
    public required IReadOnlyList<SupplyCase> Cases { get; init; }

    /// <summary>What it was looked at for.</summary>
    public required IReadOnlyList<SupplyFinding> Findings { get; init; }

    /// <summary>Flow out of the last float valve's open line, m³/s; null without a pump.</summary>
    public double? OpenFlow { get; init; }

    /// <summary>What the readings say; null where none were taken or the line has no pump.</summary>
    public SupplyDiagnosis? Diagnosis { get; init; }

    /// <summary>Whether it carries the engine in all cases.</summary>
    public bool Carries => Findings.All(finding => finding.Standing != SupplyStanding.Short);

    /// <summary>The verdict in a sentence.</summary>
    public string Verdict => SupplyWords.Verdict(Findings);

    /// <summary>The case of a kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>The case.</returns>
    public SupplyCase Of(SupplyCaseKind kind) => Cases.First(one => one.Setting.Kind == kind);
}
