namespace Tickover.Workshop.Visits.Measures;

/// <summary>How balance and mixture moved from one visit to the next.</summary>
/// <remarks>Two visits cannot tell a creep from a jump; the words leave that to whoever knows when it came.</remarks>
public static class Drift
{
    /// <summary>Taken for what moves nothing, where a measure has no limit between places; the ±10 % common practice accepts at idle.</summary>
    private const double OrdinaryPart = 0.10;

    /// <summary>The drift of everything read in rounds, visit by visit.</summary>
    /// <param name="history">The car over the years.</param>
    /// <returns>Oldest first; nothing where a hand-over round or the next round as found is missing.</returns>
    public static IReadOnlyList<MeasureDrift> Of(CarHistory history)
    {
        ArgumentNullException.ThrowIfNull(history);
        var visits = history.Visits.OrderBy(v => v.Visit.ArrivedOn).ThenBy(v => v.Visit.Number).Select(v => (v.Visit, Compared: BeforeAndAfter.Of(v))).ToList();
        List<MeasureDrift> drifts = [];
        for (var later = 1; later < visits.Count; later++)
        {
            foreach (var now in visits[later].Compared.Where(c => c is { Measure.IsRound: true, AsFound: not null }))
            {
                // Not every visit reads everything; the last hand-over that did counts.
                var (visit, compared) = visits.Take(later).LastOrDefault(v => Left(v.Compared, now.Measure) is not null);
                if (visit is not null && Between(visit, visits[later].Visit, Left(compared, now.Measure)!, now.AsFound!) is { } drift)
                {
                    drifts.Add(drift);
                }
            }
        }

        return drifts;
    }

    private static RoundSpread? Left(IReadOnlyList<MeasureComparison> compared, MeasureDefinition measure) => compared.FirstOrDefault(c => c.Measure == measure)?.AsLeft;

    private static MeasureDrift? Between(Visit earlier, Visit later, RoundSpread before, RoundSpread now)
    {
        List<PlaceDrift> places =
        [
            .. from old in before.Places
               join fresh in now.Places on old.Reading.Reading.Place equals fresh.Reading.Reading.Place
               select Place(old, fresh, before, now),
        ];
        if (places.Count < 2)
        {
            return null;
        }

        var change = (now.MeanSi - before.MeanSi) / Math.Abs(before.MeanSi);
        var meaning = places.Exists(p => p.Moved) ? DriftMeaning.SomeMoved : Math.Abs(change) > Allowed(before) ? DriftMeaning.AllAlike : DriftMeaning.Held;
        return new MeasureDrift
        {
            Measure = before.Round.Measure,
            Earlier = earlier,
            Later = later,
            Before = before,
            Now = now,
            Places = places,
            ChangeOfMean = change,
            Days = earlier.LeftOn is { } left ? later.ArrivedOn.DayNumber - left.DayNumber : null,
            Distance = later.OdometerIn - earlier.OdometerOut is >= 0 and var distance ? distance : null,
            Meaning = meaning,
            Words = Words(meaning, places),
        };
    }

    private static PlaceDrift Place(PlaceDeviation old, PlaceDeviation fresh, RoundSpread before, RoundSpread now)
    {
        var (was, isNow) = (old.Reading, fresh.Reading);
        var bands = (was.BandSi / Math.Abs(before.MeanSi)) + (isNow.BandSi / Math.Abs(now.MeanSi));
        var allowed = Math.Max(bands ?? 0, Allowed(before));
        return new PlaceDrift(
            was.Reading.Place, was.Reading.Si!.Value, isNow.Reading.Si!.Value, old.DeviationPart, fresh.DeviationPart, Math.Abs(fresh.DeviationPart - old.DeviationPart) > allowed);
    }

    // What is accepted between places is no drift: the limit on the deviation, or half of that on the spread.
    private static double Allowed(RoundSpread round)
    {
        var mean = round.MeanSi;
        var limit = round.Round.Measure.Limit;
        return (limit?.LargestDeviation(mean) ?? (limit?.LargestSpread(mean) / 2) ?? (OrdinaryPart * Math.Abs(mean))) / Math.Abs(mean);
    }

    private static string Words(DriftMeaning meaning, IReadOnlyList<PlaceDrift> places) => meaning switch
    {
        DriftMeaning.Held => "Held: no change beyond what is accepted between readings.",
        DriftMeaning.AllAlike => "All moved alike: speed, timing, weather or another meter may be the cause, not the balance.",
        _ => $"{string.Join(", ", places.Where(p => p.Moved).Select(p => p.Place.Words()))} moved against the others. Linkage wear moves it slowly; where it came at once, it is something else: a stop screw, a rod, a leak, ignition (published trade texts).",
    };
}
