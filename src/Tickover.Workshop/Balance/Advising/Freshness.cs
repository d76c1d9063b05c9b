using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Which barrels have been read since they were last moved, at idle and at held speeds.</summary>
internal sealed class Freshness
{
    private readonly BalanceBook _book;
    private readonly List<(int Index, BalanceRound Round)> _rounds;

    /// <summary>Begins.</summary>
    /// <param name="book">The book.</param>
    public Freshness(BalanceBook book)
    {
        _book = book;
        _rounds = [.. book.Steps.Select((s, i) => (Index: i, Round: (s as RoundRead)?.Round)).Where(r => r.Round is not null && RoundFaults.Void(r.Round, book).Length == 0).Select(r => (r.Index, r.Round!))];
    }

    /// <summary>Barrels not read since they were moved.</summary>
    /// <param name="condition">Zero for idle, else the held speed.</param>
    /// <returns>Their numbers, in order.</returns>
    public IReadOnlyList<int> Stale(int condition) => [.. _book.Plan.Barrels.Select(b => b.Number).Where(b => LastRead(condition, b) <= LastMoved(condition, b))];

    /// <summary>Whether a whole round was read since anything was moved.</summary>
    /// <param name="condition">Zero for idle, else the held speed.</param>
    /// <returns>True where one was.</returns>
    public bool IsProved(int condition) => Proofs(condition) > 0;

    /// <summary>Whole rounds read since anything was moved.</summary>
    /// <param name="condition">Zero for idle, else the held speed.</param>
    /// <returns>How many.</returns>
    public int Proofs(int condition)
    {
        var moved = _book.Plan.Barrels.Max(b => LastMoved(condition, b.Number));
        return _rounds.Count(r => r.Index > moved && InfluenceModel.Key(r.Round.HeldRpm) == condition && Whole(r.Round));
    }

    /// <summary>Whether a kind was read of every barrel since something was put right.</summary>
    /// <param name="kind">What.</param>
    /// <returns>True where it was.</returns>
    public bool WasRead(ReadKinds kind)
    {
        var since = _book.Steps.Select((s, i) => s is CheckedFor { Found: true } ? i : -1).DefaultIfEmpty(-1).Max();
        return _rounds.Exists(r => r.Index > since && r.Round.Readings.Count(x => Has(x, kind)) >= _book.Plan.Barrels.Count);
    }

    /// <summary>Whether any turn was made.</summary>
    /// <returns>True where one was.</returns>
    public bool AnythingTurned() => _book.Steps.Any(s => s is Turned or RodsTakenOff);

    private bool IsOff(int step) => _book.Steps.Take(step).LastOrDefault(s => s is RodsTakenOff or RodsPutBack) is RodsTakenOff;

    private static bool Has(BarrelReading reading, ReadKinds kind) => kind switch
    {
        ReadKinds.Vacuum => reading.Vacuum is not null,
        ReadKinds.Lambda => reading.Lambda is not null,
        ReadKinds.Header => reading.Header is not null,
        _ => reading.Air is not null,
    };

    private bool Whole(BalanceRound round) => round.Readings.Where(r => r.Air is not null).Select(r => r.Barrel).Distinct().Count() >= _book.Plan.Barrels.Count;

    private int LastRead(int condition, int barrel) =>
        _rounds.Where(r => InfluenceModel.Key(r.Round.HeldRpm) == condition && r.Round.Readings.Any(x => x.Barrel == barrel && x.Air is not null)).Select(r => r.Index).DefaultIfEmpty(-1).Max();

    private int LastMoved(int condition, int barrel)
    {
        for (var i = _book.Steps.Count - 1; i >= 0; i--)
        {
            if (Moves(i, condition, barrel))
            {
                return i;
            }
        }

        return -1;
    }

    private bool Moves(int step, int condition, int barrel) => _book.Steps[step] switch
    {
        // on its ball a rod may hold any plate off its stop
        Turned turned when condition == 0 && _book.Plan.Find(turned.Adjuster)?.Kind is AdjusterKind.LinkRod or AdjusterKind.BankRod => !IsOff(step),
        Turned turned => _book.Plan.Find(turned.Adjuster) is { } a && a.Barrels.Contains(barrel) && new NominalGains(_book.Plan, condition == 0, 4).Own(a) > 0,
        RodsTakenOff or RodsPutBack => condition == 0,
        CheckedFor check => check.Found,
        _ => false,
    };
}
