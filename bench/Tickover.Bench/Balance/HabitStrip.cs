using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>What the habit does about a barrel that no screw brings up: off comes the carburettor, the spindle is looked at, then the plate.</summary>
internal sealed class HabitStrip(HabitHands hands)
{
    private readonly Dictionary<FaultPlace, int> _ranks = [];
    private readonly HashSet<int> _stripped = [];

    /// <summary>Strips for a barrel, once.</summary>
    /// <returns>Whether something was found.</returns>
    public bool For(int barrel)
    {
        if (!_stripped.Add(barrel))
        {
            return false;
        }

        var twoBarrels = hands.Plan.Carburettors[hands.Plan.Barrels[barrel - 1].Carburettor - 1].Barrels.Count > 1;
        BalanceFault[] faults = twoBarrels ? [BalanceFault.TwistedSpindle, BalanceFault.PlateSeating] : [BalanceFault.PlateSeating];
        foreach (var (fault, rank) in faults.Select((f, i) => (new FaultPlace(f, barrel), i + 1)))
        {
            _ranks[fault] = rank;
        }

        return faults.Any(f => hands.Engine.Repair(new FaultPlace(f, barrel)).WasThere is true);
    }

    public BalancerSuspicion Suspicion => new(_ranks);
}
