namespace Tickover.Reports.Paper.Pdf;

/// <summary>What becomes of a sheet that cannot hold everything even in the smallest type: the end is left out, and the last line says so.</summary>
internal static class OneSheet
{
    /// <summary>Makes room for the last line and adds it.</summary>
    /// <param name="page">The first page.</param>
    /// <param name="further">Pieces that stood on further pages.</param>
    /// <param name="shape">The paper.</param>
    /// <param name="type">Sizes of type.</param>
    internal static IReadOnlyList<Placed> Cut(IReadOnlyList<Placed> page, IReadOnlyList<Placed> further, PageShape shape, TypeScale type)
    {
        var look = type.Body with { Bold = true };
        var kept = page.ToList();
        var beyond = further.Count(p => !IsHead(p, further));
        while (kept.Count > 0 && (Bottom(kept) + look.Lead > shape.TextHeight || kept[^1].Piece.WithNext))
        {
            beyond += kept[^1].Piece is { WithNext: true, Head: null } ? 0 : 1;
            kept.RemoveAt(kept.Count - 1);
        }

        var lines = new Setter().Lines(Prose.Of($"This sheet is full: {(beyond == 1 ? "one more entry is" : $"{beyond} more entries are")} in the workshop's record only."), look, shape.TextWidth);
        kept.Add(new Placed(new Piece(look.Lead, (canvas, x, y) => canvas.Line(lines[0], look, x, y)), Bottom(kept)));
        return kept;
    }

    // A head that was only repeated is nothing that is left out
    private static bool IsHead(Placed placed, IReadOnlyList<Placed> all) => all.Any(p => ReferenceEquals(p.Piece.Head, placed.Piece));

    private static double Bottom(List<Placed> page) => page.Count == 0 ? 0 : page[^1].Top + page[^1].Piece.Height;
}
