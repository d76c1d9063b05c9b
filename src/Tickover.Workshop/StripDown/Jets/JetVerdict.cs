using Tickover.Physics;

namespace Tickover.Workshop.StripDown.Jets;

/// <summary>What a jet is.</summary>
public sealed record JetVerdict
{
    /// <summary>The jet as measured.</summary>
    public required JetRun Jet { get; init; }

    /// <summary>Bore by its stamp, mm; null where it has none.</summary>
    public double? StampBore { get; init; }

    /// <summary>Bore by its flow, mm; null where it was not on the bench.</summary>
    public double? FlowBore { get; init; }

    /// <summary>90 % band of the bore by flow, ± mm.</summary>
    public double FlowBand { get; init; }

    /// <summary>Flow on this bench, ml a minute; null where it was not on it.</summary>
    public double? Flow { get; init; }

    /// <summary>Off the middle flow of those of its set, as a part; null where it is the only one.</summary>
    public double? OffSet { get; init; }

    /// <summary>90 % band of <see cref="OffSet"/>, ±.</summary>
    public double OffSetBand { get; init; }

    /// <summary>Whether the coefficient's formula was used within its range.</summary>
    public Validity Validity { get; init; }

    /// <summary>What the three say together.</summary>
    public JetFinding Finding { get; init; }

    /// <summary>The same in words, with what to do.</summary>
    public string Words { get; init; } = "";
}
