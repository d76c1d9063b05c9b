using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising.Mixture;

/// <summary>Idle mixture, screw by screw in the order of the barrels, once all pass alike air: by gas where λ of each cylinder can be read, else by best-lean; at last by the gas of each bank.</summary>
internal sealed class IdleMixture
{
    private readonly MeterSettings _meter;
    private readonly EnginePlan _plan;
    private readonly IReadOnlyList<(int Bank, Adjuster Screw, ScrewAdvice Advice)> _banks;
    private readonly IReadOnlyList<(Adjuster Screw, ScrewAdvice Advice)> _screws;

    /// <summary>Begins.</summary>
    /// <param name="book">The book.</param>
    public IdleMixture(BalanceBook book)
    {
        _meter = book.Meter;
        _plan = book.Plan;
        _banks = !ByLambda && _meter.Available.HasFlag(ReadKinds.BankGas)
            ? [.. Enumerable.Range(1, book.Plan.Banks).Select(b => (b, ByBank.Of(book, b, _meter.Lambda))).Where(b => b.Item2 is not null).Select(b => (b.b, b.Item2!.Value.Screw, b.Item2.Value.Advice))]
            : [];
        _screws = IsWanted ? [.. book.Plan.Adjusters.Where(a => a.Kind is AdjusterKind.MixtureScrew or AdjusterKind.JetNut).Select(a => (a, Of(book, a)))] : [];
    }

    /// <summary>What is odd about screws.</summary>
    public IEnumerable<string> Remarks => _screws.Select(s => s.Advice.Remark).Concat(_banks.Select(b => b.Advice.Remark)).Where(r => r.Length > 0);

    private bool ByLambda => _meter.Available.HasFlag(ReadKinds.Lambda);

    private bool IsWanted => ByLambda || _meter.Available.HasFlag(ReadKinds.Speed);

    /// <summary>The next turn or reading; null where every screw is set, or neither λ, CO nor speed is read here.</summary>
    /// <returns>The move.</returns>
    public NextMove? Next() =>
        _screws.Where(s => s.Advice.Read || s.Advice.Turns != 0).Select(s => Move(s.Screw, s.Advice, ByLambda ? ReadKinds.Lambda : ReadKinds.Speed))
            .Concat(_banks.Where(b => b.Advice.Read || b.Advice.Turns != 0).Select(b => b.Advice.Read ? ReadBank(b.Bank, b.Advice) : Move(b.Screw, b.Advice, ReadKinds.BankGas)))
            .FirstOrDefault();

    private ScrewAdvice Of(BalanceBook book, Adjuster screw) => ByLambda
        ? ByGas.Of(new GasTask(screw, $"{screw.Where}, {screw.Thing}", "λ of this cylinder alone, probe deep, engine hot; a minute for the gas to come through."), new ScrewHistory(book, screw, r => r.Lambda, forgets: true), _meter.Lambda)
        : BestLean.Of(screw, new ScrewHistory(book, screw, r => r.Air is null && r.Vacuum is null && r.Lambda is null ? r.Rpm : null, forgets: false));

    private NextMove ReadBank(int bank, ScrewAdvice advice) => new()
    {
        Kind = NextKind.Read,
        Who = BankNames.Of(_plan, bank),
        What = "Read λ or CO of the bank",
        Why = advice.Why,
        Read = ReadKinds.BankGas,
    };

    private static NextMove Move(Adjuster screw, ScrewAdvice advice, ReadKinds reads) => advice.Turns == 0
        ? new NextMove
        {
            Kind = NextKind.Read,
            Who = screw.Where,
            What = reads == ReadKinds.Lambda ? $"Read λ of barrel {string.Join(" and ", screw.Barrels)}" : "Note the idle speed",
            Why = advice.Why,
            Read = reads,
            Barrels = [screw.Barrels[0]],
        }
        : new NextMove
        {
            Kind = NextKind.Turn,
            Who = screw.Where,
            What = $"{char.ToUpperInvariant(screw.Thing[0])}{screw.Thing[1..]}: {MoveWords.Way(screw, advice.Turns)} {MoveWords.HowFar(screw, advice.Turns)}",
            Why = advice.Why,
            Adjuster = screw,
            Turns = advice.Turns,
            MovesForeseen = 1,
            Read = reads,
            Barrels = [screw.Barrels[0]],
        };
}
