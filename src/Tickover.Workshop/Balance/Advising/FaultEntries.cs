namespace Tickover.Workshop.Balance.Advising;

/// <summary>Gathers the readings the faults are weighed by: the last whole round of each condition and kind as found, that is before anything was turned.</summary>
/// <remarks>Screws turned to even out readings hide what made them uneven. Where something was put right, what was read before counts no more.</remarks>
internal static class FaultEntries
{
    private static readonly (ReadKinds Kind, Func<BarrelReading, double?> Value, Func<MeterSettings, double> Deviation)[] Others =
    [
        (ReadKinds.Vacuum, r => r.Vacuum, m => m.VacuumKilopascals),
        (ReadKinds.Lambda, r => r.Lambda, m => m.Lambda),
        (ReadKinds.Header, r => r.Header, m => m.HeaderCelsius),
    ];

    /// <summary>The entries.</summary>
    /// <param name="book">The book.</param>
    /// <param name="meter">What the meter has shown to be good to.</param>
    /// <returns>Block by block.</returns>
    public static IReadOnlyList<FaultEntry> Of(BalanceBook book, MeterSettings meter)
    {
        var since = book.Steps.Select((s, i) => s is CheckedFor { Found: true } ? i + 1 : 0).DefaultIfEmpty(0).Max();
        var all = book.Steps.Select((step, at) => (step, at)).Skip(since).Where(s => s.step is RoundRead { Round: var r } && RoundFaults.Void(r, book).Length == 0)
            .Select(s => (((RoundRead)s.step).Round, At: s.at)).ToList();
        var turned = since + book.Steps.Skip(since).TakeWhile(s => s is not (Turned or RodsTakenOff)).Count();
        var rounds = all.Where(r => r.At < turned).ToList();
        var entries = new List<FaultEntry>();
        foreach (var condition in rounds.GroupBy(r => InfluenceModel.Key(r.Round.HeldRpm)).OrderBy(g => g.Key))
        {
            var whole = condition.Where(r => Whole(r.Round, book)).ToList();
            if (whole.Count > 0)
            {
                Air(entries, condition.Key, RoundCorrection.Of(whole[^1].Round, meter));
                Repeat(entries, condition.Key, book, [.. all.Where(r => InfluenceModel.Key(r.Round.HeldRpm) == condition.Key && Whole(r.Round, book))], meter);
            }

            foreach (var (kind, value, deviation) in Others)
            {
                if (condition.LastOrDefault(r => r.Round.Readings.Count(x => value(x) is not null) == book.Plan.Barrels.Count).Round is { } read)
                {
                    var mean = read.Readings.Average(r => value(r)!.Value);
                    entries.AddRange(read.Readings.Select(r => new FaultEntry(kind, condition.Key, r.Barrel, value(r)!.Value - mean, deviation(meter), mean)));
                }
            }
        }

        return entries;
    }

    private static bool Whole(BalanceRound round, BalanceBook book) => round.Readings.Where(x => x.Air is not null).Select(x => x.Barrel).Distinct().Count() == book.Plan.Barrels.Count;

    private static void Air(List<FaultEntry> entries, int condition, IReadOnlyList<CorrectedReading> read)
    {
        var mean = read.Average(r => r.Air);
        entries.AddRange(read.Select(r => new FaultEntry(ReadKinds.Air, condition, r.Barrel, r.Air - mean, Math.Sqrt(r.Variance), mean)));
    }

    // two whole rounds with nothing moved between them
    private static void Repeat(List<FaultEntry> entries, int condition, BalanceBook book, List<(BalanceRound Round, int At)> whole, MeterSettings meter)
    {
        for (var i = 1; i < whole.Count; i++)
        {
            if (book.Steps.Skip(whole[i - 1].At + 1).Take(whole[i].At - whole[i - 1].At - 1).Any(s => s is not (RoundRead or LookedAt)))
            {
                continue;
            }

            var (a, b) = (RoundCorrection.Of(whole[i - 1].Round, meter), RoundCorrection.Of(whole[i].Round, meter));
            var (meanA, meanB) = (a.Average(r => r.Air), b.Average(r => r.Air));
            entries.AddRange(a.Zip(b, (x, y) => new FaultEntry(ReadKinds.Air, condition, x.Barrel, y.Air - meanB - x.Air + meanA, Math.Sqrt(x.Variance + y.Variance), meanB, IsRepeat: true)));
        }
    }
}
