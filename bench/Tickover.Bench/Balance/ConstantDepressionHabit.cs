using Tickover.Workshop.Balance;

namespace Tickover.Bench.Balance;

/// <summary>Case (c): clamp slackened, both stops to the same air, clamp tightened with its delay, looked at off idle (trade report 2.8).</summary>
internal sealed class ConstantDepressionHabit(HabitHands hands)
{
    private const int Loops = 3;
    private const int MostTurns = 10;
    private const double Pleased = 0.5;
    private readonly List<string> _stops = [.. hands.Plan.Carburettors.Select(c => $"stop:{c.Number}")];

    public BalancerSuspicion Run()
    {
        for (var loop = 0; loop < Loops && !hands.Tired; loop++)
        {
            hands.Engine.RodsOff();
            hands.Air();
            hands.SetSpeed(_stops);
            AtIdle();
            Clamp();
            hands.Engine.RodsOn();
            if (OffIdle() && hands.IdleGood(hands.Air()))
            {
                break;
            }
        }

        return BalancerSuspicion.None;
    }

    private void AtIdle()
    {
        for (var i = 0; i < MostTurns && !hands.Tired; i++)
        {
            var air = hands.Air();
            if (air.Length == 0)
            {
                return;
            }

            // the one furthest off is turned; of two that is the second, brought to the first
            var worst = Enumerable.Range(0, air.Length).Reverse().MaxBy(k => Math.Abs(air[k] - air.Average()));
            var off = air[worst] - air.Average();
            if (Math.Abs(off) <= Pleased / 2 || !hands.Turn(_stops[worst], off > 0 ? -HabitHands.Eighth : HabitHands.Eighth))
            {
                return;
            }
        }
    }

    private void Clamp()
    {
        for (var i = 0; i < 6; i++)
        {
            if (hands.Engine.OfferRod("clamp").Step is not LookedAt { Gap: var gap } || Math.Abs(gap) <= 0.1 || !hands.Turn("clamp", gap > 0 ? -HabitHands.Eighth : HabitHands.Eighth))
            {
                return;
            }
        }
    }

    private bool OffIdle()
    {
        for (var i = 0; i < 6 && !hands.Tired; i++)
        {
            var air = hands.Air(1500);
            if (air.Length == 0)
            {
                return false;
            }

            if (hands.OffIdleGood(air))
            {
                return true;
            }

            hands.Turn("clamp", air[^1] > air[0] ? -HabitHands.Eighth : HabitHands.Eighth);
            hands.Air();
        }

        return false;
    }
}
