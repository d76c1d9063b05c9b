using Tickover.Physics.Gauges;

namespace Tickover.Workshop.Tanks;

/// <summary>What the readings say of sender and gauge.</summary>
public sealed record SenderVerdict
{
    /// <summary>Families and faults weighed.</summary>
    public required SenderDiagnosis Diagnosis { get; init; }

    /// <summary>Ohms over fuel; null with fewer than two fillings read.</summary>
    public SenderCurve? Curve { get; init; }

    /// <summary>Cures, the smallest error first; empty where they cannot be looked for.</summary>
    public IReadOnlyList<GaugeCure> Cures { get; init; } = [];

    /// <summary>The cure to take; null without cures.</summary>
    public GaugeCure? Advised { get; init; }

    /// <summary>The family the cures aim at; null without cures.</summary>
    public SenderFamily? Gauge { get; init; }
}
