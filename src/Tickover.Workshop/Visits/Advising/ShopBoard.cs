using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Visits.Advising;

/// <summary>The cars in the shop, grouped by who has the ball.</summary>
/// <param name="Us">Waiting on us.</param>
/// <param name="Owner">Waiting on the owner.</param>
/// <param name="PartsOrClock">Waiting on parts or the clock.</param>
public sealed record ShopBoard(IReadOnlyList<ShopRow> Us, IReadOnlyList<ShopRow> Owner, IReadOnlyList<ShopRow> PartsOrClock)
{
    /// <summary>Groups and orders the visits that are not over. In each group an unsafe car comes first, then the oldest promise, then the longest stay.</summary>
    /// <param name="visits">Visits; those that are over are left out.</param>
    /// <param name="now">The moment, with the workshop's offset.</param>
    /// <param name="mixture">The mixture maps, where there are any.</param>
    /// <returns>The board.</returns>
    public static ShopBoard Of(IEnumerable<VisitRecord> visits, DateTimeOffset now, IMixtureAdvice? mixture = null)
    {
        ArgumentNullException.ThrowIfNull(visits);
        var rows = visits.Where(v => v.Visit.LeftOn is null && !v.Visit.Removed).Select(v => Row(new AdviceContext(v, now, mixture)))
            .OrderByDescending(r => r.Worst == Severity.Unsafe)
            .ThenBy(r => r.Record.Visit.DueOn ?? DateOnly.MaxValue)
            .ThenBy(r => r.Record.Visit.ArrivedOn).ThenBy(r => r.Record.Visit.Number)
            .ToLookup(r => r.Group);
        return new ShopBoard([.. rows[ShopGroup.Us]], [.. rows[ShopGroup.Owner]], [.. rows[ShopGroup.PartsOrClock]]);
    }

    private static ShopRow Row(AdviceContext context) => new()
    {
        Record = context.Record,
        Group = context.Record.Visit.WaitsOn switch
        {
            WaitsOn.Owner => ShopGroup.Owner,
            WaitsOn.Parts or WaitsOn.Clock => ShopGroup.PartsOrClock,
            _ => ShopGroup.Us,
        },
        Stage = context.Stage,
        StageWords = context.IsBegun || context.Stage == Stage.Arrival ? context.Stage.Words() : $"{context.Stage.Words()} is next",
        Next = NextSteps.Of(context) is [var first, ..] ? first : null,
        Worst = context.Record.Findings.Where(Stands).Select(f => (Severity?)f.Severity).Min(),
    };

    // What can hurt someone stands until it is put right, whatever was decided about it.
    private static bool Stands(Finding finding) =>
        !finding.Removed && (finding.State == FindingState.Open || (finding.Severity == Severity.Unsafe && finding.State != FindingState.PutRight));
}
