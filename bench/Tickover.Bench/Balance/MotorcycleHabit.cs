using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>Case (d): by vacuum columns, each link in its order against the fixed carburettor, then the knob for the speed (trade report 2.10).</summary>
internal sealed class MotorcycleHabit(HabitHands hands)
{
    private const int Loops = 3;
    private const int MostTurns = 8;

    // 10 mmHg, what good hands reach (trade report 2.4)
    private const double Pleased = 1.33;

    public BalancerSuspicion Run()
    {
        var reference = hands.Plan.Carburettors[(hands.Plan.Reference ?? 2) - 1];
        var links = hands.Plan.Adjusters.Where(a => a.Kind == AdjusterKind.CouplingScrew).ToList();
        for (var loop = 0; loop < Loops && !hands.Tired; loop++)
        {
            var turned = 0;
            foreach (var link in links)
            {
                turned += Link(link, reference);
            }

            hands.Vacuum();
            hands.SetSpeed(["master"]);
            hands.Vacuum(3000);
            if (turned == 0)
            {
                break;
            }
        }

        return BalancerSuspicion.None;
    }

    // a column that stands higher is shut further; a pair goes by its mean against that of the other two
    private int Link(Adjuster link, PlanCarburettor reference)
    {
        var turned = 0;
        for (; turned < MostTurns && !hands.Tired; turned++)
        {
            var vacuum = hands.Vacuum();
            if (vacuum.Length == 0)
            {
                break;
            }

            var off = HabitHands.Mean(vacuum, link.Barrels) - HabitHands.Mean(vacuum, Against(link, reference));
            if (Math.Abs(off) <= Pleased || !hands.Turn(link.Key, off > 0 ? HabitHands.Eighth : -HabitHands.Eighth))
            {
                break;
            }
        }

        return turned;
    }

    private IEnumerable<int> Against(Adjuster link, PlanCarburettor reference)
    {
        if (link.Barrels.Contains(reference.Barrels[0]))
        {
            return [];
        }

        // of the pair without the fixed one, the follower is brought to its partner
        var pair = hands.Plan.Adjusters.First(a => a.Kind == AdjusterKind.CouplingScrew && a.Barrels.Count > 1);
        return link.Barrels.Count > 1 ? hands.Plan.Barrels.Select(b => b.Number).Except(link.Barrels)
            : pair.Barrels.Contains(link.Barrels[0]) ? pair.Barrels.Except(link.Barrels)
            : reference.Barrels;
    }
}
