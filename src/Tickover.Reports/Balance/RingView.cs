namespace Tickover.Reports.Balance;

/// <summary>What the ring of one barrel shows.</summary>
/// <param name="Barrel">Number of the barrel.</param>
public sealed record RingView(int Barrel)
{
    /// <summary>The figure in the middle as shown, such as "4.1"; empty where there is none.</summary>
    public string Figure { get; init; } = "";

    /// <summary>Deviation from the mean as a part of it; null where that is not known.</summary>
    public double? DeviationPart { get; init; }

    /// <summary>The limit either side of the mean, as a part of it; null where there is none.</summary>
    public double? LimitPart { get; init; }

    /// <summary>What the reading is good to, either side, as a part of the mean; null where that is not known.</summary>
    public double? BandPart { get; init; }

    /// <summary>How it lies against the limit.</summary>
    public RingStanding Standing { get; init; }

    /// <summary>Whether the reading is older than the last move.</summary>
    public bool IsHollow { get; init; }

    /// <summary>Whether it is the barrel to read next.</summary>
    public bool IsNext { get; init; }
}
