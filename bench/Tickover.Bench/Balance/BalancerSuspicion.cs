using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>Faults a balancer suspected, with the rank (1 the likeliest) each had when it was last weighed before it was looked for.</summary>
/// <param name="Ranks">Rank by fault.</param>
internal sealed record BalancerSuspicion(IReadOnlyDictionary<FaultPlace, int> Ranks)
{
    /// <summary>Nothing was suspected.</summary>
    public static BalancerSuspicion None { get; } = new(new Dictionary<FaultPlace, int>());
}
