using Tickover.Reports.Paper;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>A table of figures as found beside as left. A column in which nothing was measured is left out, and its name says so.</summary>
internal static class BeforeAfterTable
{
    internal static Table Of(Telling t, string name, IReadOnlyList<Column> lead, IReadOnlyList<Row> rows)
    {
        var (found, left) = (rows.Any(r => r.Found.Length > 0), rows.Any(r => r.Left.Length > 0));
        List<Column> columns = [.. lead];
        if (found || !left)
        {
            columns.Add(Column.OfFigures(left ? "As found" : "As found; not measured again"));
        }

        if (left)
        {
            columns.Add(Column.OfFigures(found ? "As left" : "As left; not measured before"));
        }

        return new Table(t.Say(name), [.. columns.Select(c => c with { Heading = t.Say(c.Heading) })], [.. rows.Select(r => Cells(r, found || !left, left))]) { Narrow = true };
    }

    private static IReadOnlyList<Prose> Cells(Row row, bool found, bool left) =>
        [.. row.Lead, .. found ? new[] { Shown(row.Found) } : [], .. left ? new[] { Shown(row.Left) } : []];

    private static Prose Shown(string text) => Prose.Of(text.Length > 0 ? text : "not measured");

    /// <summary>One line: what it is, and the texts of both figures.</summary>
    internal sealed record Row(IReadOnlyList<Prose> Lead, string Found, string Left);
}
