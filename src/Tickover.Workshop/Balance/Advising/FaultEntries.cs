using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Gathers the readings the faults are weighed by: the last whole round of each condition and kind as found, that is before anything was turned.</summary>
/// <remarks>Screws turned to even out readings hide what made them uneven. Where something was put right, what was read before counts no more.</remarks>
internal static class FaultEntries
{
    private const double NeverQuite = 0.01;                 // part of the air: an engine never stands quite where it stood

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

    // two whole rounds one after the other: barrels that nothing moved between them ought to stand to one another as before
    private static void Repeat(List<FaultEntry> entries, int condition, BalanceBook book, List<(BalanceRound Round, int At)> whole, MeterSettings meter)
    {
        for (var i = 1; i < whole.Count; i++)
        {
            var between = book.Steps.Skip(whole[i - 1].At + 1).Take(whole[i].At - whole[i - 1].At - 1).ToList();
            var still = Still(between, condition, whole[i].Round, book);
            if (still.Count < 2)
            {
                continue;
            }

            var pairs = RoundCorrection.Of(whole[i - 1].Round, meter).Zip(RoundCorrection.Of(whole[i].Round, meter)).Where(p => still.Contains(p.First.Barrel)).ToList();
            var common = pairs.Average(p => p.Second.Air - p.First.Air);
            entries.AddRange(pairs.Select(p => new FaultEntry(ReadKinds.Air, condition, p.First.Barrel, p.Second.Air - p.First.Air - common, Math.Sqrt(p.First.Variance + p.Second.Variance + (NeverQuite * NeverQuite * p.First.Air * p.First.Air)), p.Second.Air, IsRepeat: true)));
        }
    }

    // barrels that nothing between two rounds moved; none where rods came off or on, or were turned where they hold plates
    private static HashSet<int> Still(List<BalanceStep> between, int condition, BalanceRound round, BalanceBook book)
    {
        var gains = new NominalGains(book.Plan, condition == 0, round.Readings.Average(r => r.Air ?? 0));
        var turned = between.OfType<Turned>().Select(t => book.Plan.Find(t.Adjuster)).OfType<Adjuster>().ToList();
        return between.Exists(s => s is not (RoundRead or LookedAt or Turned)) || (condition == 0 && !round.RodsOff && turned.Exists(a => a.Kind is AdjusterKind.LinkRod or AdjusterKind.BankRod))
            ? []
            : [.. book.Plan.Barrels.Select(b => b.Number).Except(turned.Where(a => gains.Own(a) > 0).SelectMany(a => a.Barrels))];
    }
}
