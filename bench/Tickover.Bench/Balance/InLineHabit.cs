using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>Case (b): the reference first, then a neighbour on one side, then the other, by coupling screws (trade report 2.7).</summary>
internal sealed class InLineHabit
{
    private const int Loops = 3;
    private const int MostTurns = 8;
    private readonly HabitHands _hands;
    private readonly HabitStrip _strip;
    private readonly HabitBypasses _bypasses;

    public InLineHabit(HabitHands hands)
    {
        _hands = hands;
        _strip = new HabitStrip(hands);
        _bypasses = new HabitBypasses(hands, _strip);
    }

    private PlanCarburettor Reference => _hands.Plan.Carburettors[(_hands.Plan.Reference ?? 1) - 1];

    public BalancerSuspicion Run()
    {
        _bypasses.Shut();
        for (var loop = 0; loop < Loops && !_hands.Tired; loop++)
        {
            _hands.Air();
            _hands.SetSpeed([$"stop:{Reference.Number}"]);
            _bypasses.Match();
            foreach (var carburettor in _hands.Plan.Carburettors.Where(c => c != Reference).OrderBy(c => Math.Abs(c.Number - Reference.Number)).ThenBy(c => c.Number))
            {
                Couple(carburettor);
            }

            if (_hands.IdleGood(_hands.Air()) && _hands.OffIdleGood(_hands.Air(1500)) && _hands.OffIdleGood(_hands.Air(2500)))
            {
                break;
            }
        }

        return _strip.Suspicion;
    }

    // brought to the reference an eighth at a time; the reference is read again each time, for it moves with speed
    private void Couple(PlanCarburettor carburettor)
    {
        for (var i = 0; i < MostTurns && !_hands.Tired; i++)
        {
            var air = _hands.Air();
            if (air.Length == 0)
            {
                return;
            }

            var off = HabitHands.Mean(air, carburettor.Barrels) - HabitHands.Mean(air, Reference.Barrels);
            if (Math.Abs(off) <= HabitHands.Pleased || !_hands.Turn($"coupling:{carburettor.Number}", off > 0 ? -HabitHands.Eighth : HabitHands.Eighth))
            {
                return;
            }
        }
    }
}
