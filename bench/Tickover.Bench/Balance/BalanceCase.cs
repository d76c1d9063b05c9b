using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>How one balancer did on one engine.</summary>
internal sealed record BalanceCase
{
    public required int Difficulty { get; init; }

    /// <summary>Moves, rounds and minutes until idle was within limits for good; null where it never was.</summary>
    public required (int Moves, double Rounds, double Minutes)? IdleReached { get; init; }

    /// <summary>The same, idle and off idle.</summary>
    public required (int Moves, double Rounds, double Minutes)? AllReached { get; init; }

    public required int Moves { get; init; }

    public required double Rounds { get; init; }

    public required double Minutes { get; init; }

    /// <summary>True spread at idle at the end, kg/h.</summary>
    public required double Spread { get; init; }

    /// <summary>Idle speed at the end off the plan's, rpm.</summary>
    public required double RpmOff { get; init; }

    /// <summary>Rank of each hidden fault among those suspected; null where it was not.</summary>
    public required IReadOnlyList<int?> Ranks { get; init; }

    /// <summary>Lets a balancer work on one engine.</summary>
    public static BalanceCase Run(EnginePlan plan, IBalancer balancer, int seed, int difficulty)
    {
        var bench = new Workbench(Practice.PracticeEngine.Start(plan, seed, difficulty));
        var suspicion = balancer.Balance(bench);
        if (bench.RodsAreOff)
        {
            bench.RodsOn();
        }

        var truth = bench.Truth();
        return new()
        {
            Difficulty = difficulty,
            IdleReached = bench.IdleReached,
            AllReached = bench.AllReached,
            Moves = bench.Moves,
            Rounds = bench.Rounds,
            Minutes = bench.Minutes,
            Spread = truth.IdleAir.Count == 0 ? double.NaN : truth.IdleAir.Max() - truth.IdleAir.Min(),
            RpmOff = Math.Abs(truth.IdleRpm - plan.IdleRpm),
            Ranks = [.. truth.Faults.Select(f => suspicion.Ranks.TryGetValue(f.Place, out var rank) ? (int?)rank : null)],
        };
    }
}
