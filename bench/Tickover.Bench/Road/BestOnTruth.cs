using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;

namespace Tickover.Bench.Road;

/// <summary>The best set sold that a search finds on the truth itself: what could be reached at all.</summary>
/// <remarks>One part at a time by two steps either way, then pairs by a step, until nothing betters it, from the best set that anybody came to or the car as made. Not every set is tried, so it is a lower bound of the best.</remarks>
internal sealed class BestOnTruth(VirtualCar car)
{
    private const int Reach = 2;                           // steps either way, again and again
    private static readonly (JetPart One, JetPart Other)[] Pairs =
    [
        (JetParts.MainJet, JetParts.AirCorrector), (JetParts.IdleJet, JetParts.IdleBleed), (JetParts.IdleJet, JetParts.Screw), (JetParts.MainJet, JetParts.FloatLevel), (JetParts.Choke, JetParts.MainJet),
    ];

    /// <summary>Searches.</summary>
    /// <param name="found">Sets that others came to.</param>
    /// <returns>The best set found, on the described car.</returns>
    internal Car Find(IEnumerable<Car> found) => From(found.Append(car.Sample).MaxBy(Worth)!);

    private Car From(Car start)
    {
        for (var best = start; ;)
        {
            var before = Worth(best);
            best = JetParts.All.Aggregate(best, (at, part) => Best(at, Enumerable.Range(-Reach, 2 * Reach + 1).Select(k => VirtualCar.Changed(at, part, k))));
            best = Pairs.Aggregate(best, (at, pair) => Best(at, Around(at, pair.One, pair.Other)));
            if (Worth(best) <= before + 1e-9)
            {
                return best;
            }
        }
    }

    private static IEnumerable<Car?> Around(Car at, JetPart one, JetPart other) =>
        from i in (int[])[-1, 1]
        from j in (int[])[-1, 1]
        select VirtualCar.Changed(at, one, i) is { } half ? VirtualCar.Changed(half, other, j) : null;

    private Car Best(Car at, IEnumerable<Car?> others) => others.OfType<Car>().Append(at).MaxBy(Worth)!;

    // part in target first; among equals the one nearer the middle
    private double Worth(Car fitted) => car.Score(fitted) - 0.02 * car.Weights.Distance(car.Truth(fitted), car.Banks);
}
