namespace Tickover.Reports.Paper.Pdf;

/// <summary>What becomes of a sheet that cannot hold everything even in the smallest type: the end is left out, and the last line says so.</summary>
internal static class OneSheet
{
    /// <summary>Makes room for the last line and adds it.</summary>
    /// <param name="page">The first page.</param>
    /// <param name="beyond">Pieces that stood on further pages.</param>
    /// <param name="shape">The paper.</param>
    /// <param name="type">Sizes of type.</param>
    internal static IReadOnlyList<Placed> Cut(IReadOnlyList<Placed> page, int beyond, PageShape shape, TypeScale type)
    {
        var look = type.Body with { Bold = true };
        var kept = page.ToList();
        while (kept.Count > 0 && (Bottom(kept) + look.Lead > shape.TextHeight || kept[^1].Piece.WithNext))
        {
            kept.RemoveAt(kept.Count - 1);
            beyond++;
        }

        var lines = new Setter().Lines(Prose.Of($"This sheet is full: {(beyond == 1 ? "one more entry is" : $"{beyond} more entries are")} in the workshop's record only."), look, shape.TextWidth);
        kept.Add(new Placed(new Piece(look.Lead, (canvas, x, y) => canvas.Line(lines[0], look, x, y)), Bottom(kept)));
        return kept;
    }

    private static double Bottom(List<Placed> page) => page.Count == 0 ? 0 : page[^1].Top + page[^1].Piece.Height;
}
