using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Makes the account of every round of a book.</summary>
internal static class RoundAccounts
{
    private const double Ninety = 1.645;

    /// <summary>The accounts.</summary>
    /// <param name="book">The book.</param>
    /// <param name="meter">What the meter has shown to be good to.</param>
    /// <returns>One a round, in the order read.</returns>
    public static IReadOnlyList<RoundAccount> Of(BalanceBook book, MeterSettings meter)
    {
        var accounts = new List<RoundAccount>();
        var before = new List<string>();
        for (var i = 0; i < book.Steps.Count; i++)
        {
            if (book.Steps[i] is RoundRead read)
            {
                var moved = book.Steps.Skip(i + 1).OfType<Turned>().Select(t => book.Plan.Find(t.Adjuster)).Where(MovesAir).SelectMany(a => a!.Barrels).ToHashSet();
                accounts.Add(Account(read.Round, book, meter, moved) with { Before = string.Join("; ", before) });
                before.Clear();
            }
            else if (MoveWords.Of(book.Steps[i], book.Plan) is { Length: > 0 } words)
            {
                before.Add(words);
            }
        }

        return accounts;
    }

    private static bool MovesAir(Adjuster? adjuster) => adjuster is { Kind: not (AdjusterKind.MixtureScrew or AdjusterKind.JetNut) };

    private static RoundAccount Account(BalanceRound round, BalanceBook book, MeterSettings meter, HashSet<int> moved)
    {
        var corrected = RoundCorrection.Of(round, meter).Where(c => c.Barrel >= 1 && c.Barrel <= book.Plan.Barrels.Count).ToDictionary(c => c.Barrel);
        var mean = corrected.Count > 0 ? corrected.Values.Average(c => c.Air) : 0;
        var limit = book.Limits.OffMean(round.IsIdle, mean);
        var barrels = book.Plan.Barrels.Select(b => corrected.TryGetValue(b.Number, out var c)
            ? Stands(c, mean, limit, corrected.Count) with { IsHollow = moved.Contains(b.Number) }
            : new BarrelStanding(b.Number, null, 0, mean > 0 ? limit / mean : 0, 0, Standing.NotRead, IsHollow: false)).ToList();
        var banks = Banks(book, corrected);
        var whole = corrected.Count == book.Plan.Barrels.Count;
        var speeds = round.Readings.Select(r => r.Rpm).OfType<double>().ToList();
        return new RoundAccount
        {
            Round = round,
            IsWhole = whole,
            Mean = mean,
            Spread = corrected.Count > 0 ? corrected.Values.Max(c => c.Air) - corrected.Values.Min(c => c.Air) : 0,
            Rpm = speeds.Count > 0 ? (speeds.Min(), speeds.Max()) : null,
            Why = RoundFaults.Void(round, book),
            Remarks = [.. RoundFaults.Remarks(round, book)],
            Barrels = barrels,
            BankMeans = banks,
            AllWithin = whole && barrels.TrueForAll(b => Math.Abs(b.DeviationPart) <= b.LimitPart) && BanksWithin(book.Limits, round, banks),
        };
    }

    private static bool BanksWithin(BalanceLimits limits, BalanceRound round, List<double> banks) =>
        banks.Count < 2 || banks.Max() - banks.Min() <= limits.BanksApart(round.IsIdle, banks.Average());

    private static List<double> Banks(BalanceBook book, Dictionary<int, CorrectedReading> corrected) =>
        [.. book.Plan.Barrels.Where(b => corrected.ContainsKey(b.Number)).GroupBy(b => b.Bank).OrderBy(g => g.Key).Select(g => g.Average(b => corrected[b.Number].Air))];

    private static BarrelStanding Stands(CorrectedReading reading, double mean, double limit, int count)
    {
        var deviation = reading.Air - mean;
        var band = Ninety * Math.Sqrt(reading.Variance * (1 + (1.0 / count)));
        var standing = (Math.Abs(deviation) - limit, deviation > 0) switch
        {
            ( <= 0, _) when Math.Abs(deviation) + band <= limit => Standing.Within,
            ( > 0, var high) when Math.Abs(deviation) - band > limit => high ? Standing.High : Standing.Low,
            _ => Standing.CannotTell,
        };
        return new BarrelStanding(reading.Barrel, reading.Air, deviation / mean, limit / mean, band / mean, standing, IsHollow: false);
    }
}
