using Tickover.Physics.Breathing;

namespace Tickover.Bench.Peer;

/// <summary>The operating points that both solvers are given: over 50, from idle through progression to wide open.</summary>
/// <remarks>Two grids, since a shut throttle and high speed do not meet in an engine that pulls.</remarks>
internal static class PeerGrids
{
    internal static readonly OperatingGrid[] All =
    [
        new([700, 900, 1200, 1600, 2000, 2500, 3000], [2, 4, 7, 11]),
        new([1500, 2500, 3500, 4500, 5500, 6300], [18, 30, 50, 80]),
    ];
}
