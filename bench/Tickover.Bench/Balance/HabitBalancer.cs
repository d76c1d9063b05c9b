using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>The usual habit, coded from the trade report 2.6 to 2.10: round robin, the worst first, an eighth at a time, every barrel read after each turn.</summary>
internal sealed class HabitBalancer : IBalancer
{
    public string Name => "habit";

    public BalancerSuspicion Balance(Workbench engine)
    {
        var hands = new HabitHands(engine);
        return engine.Plan.Layout switch
        {
            PlanLayout.TwoBanks => new TwoBanksHabit(hands).Run(),
            PlanLayout.InLine => new InLineHabit(hands).Run(),
            PlanLayout.ConstantDepression => new ConstantDepressionHabit(hands).Run(),
            _ => new MotorcycleHabit(hands).Run(),
        };
    }
}
