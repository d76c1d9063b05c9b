using Tickover.Workshop.Visits;

namespace Tickover.Workshop.StripDown.Cards;

/// <summary>A whole set of carburettors as its cards have it.</summary>
/// <param name="Moment">As found or as left.</param>
/// <param name="Cards">The carburettors in engine order, each with its barrels.</param>
/// <param name="Groups">The measures under their headings.</param>
public sealed record SetSheet(Moment Moment, IReadOnlyList<CardOfSet> Cards, IReadOnlyList<SetGroup> Groups)
{
    /// <summary>The rows in which something stands out, in the order of the work.</summary>
    public IReadOnlyList<SetRow> Differing => [.. Rows.Where(r => r.Standing == SetStanding.Differs)];

    /// <summary>All rows.</summary>
    public IEnumerable<SetRow> Rows => Groups.SelectMany(g => g.Rows);

    /// <summary>The whole in one sentence.</summary>
    public string Heading
    {
        get
        {
            var noted = Rows.Count(r => r.Standing != SetStanding.NotNoted);
            var unlike = Differing.Count;
            var unsure = Rows.Count(r => r.Standing == SetStanding.CannotBeTold);
            var verdict = (noted, unlike, unsure) switch
            {
                (0, _, _) => "Nothing is noted of these carburettors yet",
                (_, 0, 0) => "Nothing noted so far differs from barrel to barrel",
                (_, 0, _) => $"Nothing surely differs; of {Count(unsure)} it cannot be told",
                (_, _, 0) => $"{Capital(Count(unlike))} {(unlike == 1 ? "differs" : "differ")} from barrel to barrel or from carburettor to carburettor",
                _ => $"{Capital(Count(unlike))} {(unlike == 1 ? "differs" : "differ")}, and of {Count(unsure)} it cannot be told",
            };
            return $"{verdict}.";
        }
    }

    private static string Count(int things) => things == 1 ? "one thing" : FormattableString.Invariant($"{things} things");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
