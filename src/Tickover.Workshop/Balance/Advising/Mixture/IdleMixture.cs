using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising.Mixture;

/// <summary>Idle mixture, screw by screw in the order of the barrels, once all pass alike air: by gas where λ of each cylinder can be read, else by best-lean.</summary>
internal sealed class IdleMixture
{
    private readonly MeterSettings _meter;
    private readonly IReadOnlyList<(Adjuster Screw, ScrewAdvice Advice)> _screws;

    /// <summary>Begins.</summary>
    /// <param name="book">The book.</param>
    public IdleMixture(BalanceBook book)
    {
        _meter = book.Meter;
        _screws = IsWanted ? [.. book.Plan.Adjusters.Where(a => a.Kind is AdjusterKind.MixtureScrew or AdjusterKind.JetNut).Select(a => (a, Of(book, a)))] : [];
    }

    /// <summary>What is odd about screws.</summary>
    public IEnumerable<string> Remarks => _screws.Select(s => s.Advice.Remark).Where(r => r.Length > 0);

    private bool ByLambda => _meter.Available.HasFlag(ReadKinds.Lambda);

    private bool IsWanted => ByLambda || _meter.Available.HasFlag(ReadKinds.Speed);

    /// <summary>The next turn or reading; null where every screw is set, or neither λ nor speed is read here.</summary>
    /// <returns>The move.</returns>
    public NextMove? Next() => _screws.Where(s => s.Advice.Read || s.Advice.Turns != 0).Select(s => Move(s.Screw, s.Advice)).FirstOrDefault();

    private ScrewAdvice Of(BalanceBook book, Adjuster screw) => ByLambda
        ? ByGas.Of(screw, new ScrewHistory(book, screw, r => r.Lambda, forgets: true), _meter.Lambda)
        : BestLean.Of(screw, new ScrewHistory(book, screw, r => r.Air is null && r.Vacuum is null && r.Lambda is null ? r.Rpm : null, forgets: false));

    private NextMove Move(Adjuster screw, ScrewAdvice advice) => advice.Turns == 0
        ? new NextMove
        {
            Kind = NextKind.Read,
            Who = screw.Where,
            What = ByLambda ? $"Read λ of barrel {string.Join(" and ", screw.Barrels)}" : "Note the idle speed",
            Why = advice.Why,
            Read = ByLambda ? ReadKinds.Lambda : ReadKinds.Speed,
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
            Read = ByLambda ? ReadKinds.Lambda : ReadKinds.Speed,
            Barrels = [screw.Barrels[0]],
        };
}
