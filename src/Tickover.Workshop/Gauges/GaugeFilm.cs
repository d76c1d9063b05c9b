using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>A drive with one remedy: what happened, in litres, and the estimate.</summary>
public sealed record GaugeFilm
{
    /// <summary>The tanks that drove.</summary>
    public required TwoTanks Pair { get; init; }

    /// <summary>What happened.</summary>
    public required TankMoments Moments { get; init; }

    /// <summary>Fuel in both tanks, L.</summary>
    public required IReadOnlyList<double> Truth { get; init; }

    /// <summary>The needle through the table of a fill in steps, L.</summary>
    public required IReadOnlyList<double> Needle { get; init; }

    /// <summary>Where the needle points, with the mean of a minute and a half where that is the remedy.</summary>
    public required IReadOnlyList<double> Pointer { get; init; }

    /// <summary>Best estimate from needle and accelerations, L.</summary>
    public required IReadOnlyList<double> Estimate { get; init; }

    /// <summary>Half its 90 % band, L.</summary>
    public required IReadOnlyList<double> HalfBand { get; init; }

    /// <summary>Moment at which the needle is furthest off.</summary>
    public int Worst => Enumerable.Range(0, Truth.Count).MaxBy(i => Math.Abs(Needle[i] - Truth[i]));
}
