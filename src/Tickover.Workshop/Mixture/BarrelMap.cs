namespace Tickover.Workshop.Mixture;

/// <summary>One barrel over the whole grid.</summary>
public sealed record BarrelMap
{
    /// <summary>The barrel's number, from 1.</summary>
    public required int BarrelNumber { get; init; }

    /// <summary>Numbers of barrels that are alike and have this same map, this one among them.</summary>
    public required IReadOnlyList<int> AlikeBarrels { get; init; }

    /// <summary>The points, [speed, throttle].</summary>
    public required BarrelPoint[,] Points { get; init; }
}
