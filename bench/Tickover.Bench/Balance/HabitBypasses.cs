using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>The two barrels of each carburettor made alike by the by-pass of the lower one: trade report 2.6, steps 2 and 6.</summary>
internal sealed class HabitBypasses(HabitHands hands, HabitStrip strip)
{
    private const double Strips = 1;
    private const double Quarter = 0.25;
    private const int MostTurns = 8;

    /// <summary>All gently shut.</summary>
    public void Shut()
    {
        foreach (var screw in hands.Plan.Adjusters.Where(a => a.Kind == AdjusterKind.BypassScrew))
        {
            hands.Turn(screw.Key, -screw.TravelTurns);
        }
    }

    /// <summary>The lower barrel of every carburettor brought up to the higher.</summary>
    public void Match()
    {
        foreach (var carburettor in hands.Plan.Carburettors.Where(c => c.Barrels.Count == 2))
        {
            One(carburettor);
        }
    }

    // a quarter at a time, the whole engine read after each
    private void One(PlanCarburettor carburettor)
    {
        for (var i = 0; i < MostTurns && !hands.Tired; i++)
        {
            var air = hands.Air();
            if (air.Length == 0)
            {
                return;
            }

            var (first, second) = (air[carburettor.Barrels[0] - 1], air[carburettor.Barrels[1] - 1]);
            var (low, high) = first < second ? (carburettor.Barrels[0], carburettor.Barrels[1]) : (carburettor.Barrels[1], carburettor.Barrels[0]);
            var off = Math.Abs(first - second);
            if (off <= HabitHands.Pleased || (off > Strips && !strip.For(low)))
            {
                return;
            }

            // gone past: the higher one's by-pass in rather than the lower one's out, where it is open
            if (off <= Strips && !(i > 0 && hands.Turn($"bypass:{high}", -HabitHands.Eighth)) && !hands.Turn($"bypass:{low}", Quarter))
            {
                return;
            }
        }
    }
}
