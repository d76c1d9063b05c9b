namespace Tickover.Workshop.Visits.Advising;

/// <summary>The one or two most useful next things of a visit, from all advisers.</summary>
public static class NextSteps
{
    /// <summary>All advisers.</summary>
    public static IReadOnlyList<IAdviser> Advisers { get; } =
    [
        new UnsafeAdviser(), new AgreementAdviser(), new WaitingAdviser(), new GateAdviser(), new ReadingsAdviser(), new HandOverAdviser(),
        new MixtureAdviser(), new StageAdviser(), new DueAdviser(), new ApprovalAdviser(), new InstrumentAdviser(),
    ];

    /// <summary>All advice in the order of its use.</summary>
    /// <param name="context">The visit and the day.</param>
    /// <returns>Advice, first things first; the same for the same record and moment.</returns>
    public static IReadOnlyList<Advice> All(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Record.Visit.LeftOn is not null ? [] : [.. Advisers.SelectMany(a => a.Of(context)).OrderBy(a => a.Rank)];
    }

    /// <summary>The one or two most useful; the second is of another sort than the first.</summary>
    /// <remarks>Where something can hurt someone, it stands alone: nothing else is worth reading then.</remarks>
    /// <param name="context">The visit and the day.</param>
    /// <returns>None for a visit that is over, else one or two.</returns>
    public static IReadOnlyList<Advice> Of(AdviceContext context)
    {
        var all = All(context);
        return all switch
        {
            [] => [],
            [{ Rank: AdviceRank.Unsafe } alone, ..] => [alone],
            [var first, ..] => [first, .. all.Skip(1).Where(a => a.Rank != first.Rank).Take(1)],
        };
    }
}
