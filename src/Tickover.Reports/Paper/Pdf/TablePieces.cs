using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>Tables as pieces: a row each, the head repeated on every page they reach.</summary>
internal static class TablePieces
{
    private const double ColumnGap = 10;

    // A row with more lines is torn between pages, so that no cell can be too long for the paper
    private const int LinesToATear = 16;
    private const double TallRow = 50;

    internal static IEnumerable<Piece> Of(Facts facts, BlockSetter set, double width)
    {
        var rows = facts.Entries.Select(f => (IReadOnlyList<Prose>)[Prose.Of(f.Name), f.Value]).ToList();
        var names = rows.Select(r => set.Setter.Widths(r[0], set.Type.Body).Whole).DefaultIfEmpty(0).Max() + ColumnGap;
        var first = Math.Min(names, width * 0.36);
        double[] widths = [first, width - first - ColumnGap];
        return Rows(rows, [new Column(""), new Column("")], set, (widths, set.Type.Body)).Select((p, i) => i == 0 ? p with { Before = set.Type.Space(5) } : p);
    }

    internal static IEnumerable<Piece> Of(Table table, BlockSetter set, double width)
    {
        var widths = ColumnWidths.Of(table, set, width - ColumnGap * (table.Columns.Count - 1));
        var head = Head(table, set, widths);
        var pieces = Rows(table.Rows, table.Columns, set, (widths, Look(table, set))).Select(p => p with { Head = head }).ToList();
        if (table.ShowsName)
        {
            var look = set.Type.Heading(3);
            var lines = set.Setter.Lines(Prose.Of(table.Name), look, width);
            yield return new Piece(lines.Count * look.Lead, (canvas, x, y) => canvas.Lines(lines, look, x, y)) { Before = set.Type.Space(10), WithNext = true };
        }

        yield return head with { Before = set.Type.Space(5), WithNext = true };
        for (var i = 0; i < pieces.Count; i++)
        {
            // A head with one row below it, or one last row alone, looks like a mistake; a tall row stands well alone
            var atAnEnd = pieces.Count > 2 && (i == 0 || i == pieces.Count - 2);
            yield return pieces[i] with { WithNext = pieces[i].WithNext || (atAnEnd && pieces[i].Height < TallRow) };
        }
    }

    private static TextLook Look(Table table, BlockSetter set) => table.Small ? set.Type.Small with { Paint = Paint.Ink } : set.Type.Body;

    private static Piece Head(Table table, BlockSetter set, double[] widths)
    {
        var look = Look(table, set) with { Paint = Paint.Ink2 };
        var cells = table.Columns.Select((c, i) => set.Setter.Lines(Prose.Of(c.Heading), look, widths[i])).ToList();
        var height = cells.Max(c => c.Count) * look.Lead + 2;
        return new Piece(height, (canvas, x, y) =>
        {
            for (var i = 0; i < cells.Count; i++)
            {
                Cell(canvas, cells[i], look, table.Columns[i], (x, y + height - 2 - cells[i].Count * look.Lead, widths[i]));
                x += widths[i] + ColumnGap;
            }
        });
    }

    private static IEnumerable<Piece> Rows(IReadOnlyList<IReadOnlyList<Prose>> rows, IReadOnlyList<Column> columns, BlockSetter set, (double[] Widths, TextLook Look) setting)
    {
        var (widths, look) = setting;
        var padding = set.Type.Space(2.5);
        foreach (var row in rows)
        {
            var cells = row.Select((cell, i) => set.Setter.Lines(cell, look, widths[i])).ToList();
            var longest = cells.Max(c => c.Count);
            for (var from = 0; from < longest; from += LinesToATear)
            {
                var part = cells.Select(c => (IReadOnlyList<SetLine>)[.. c.Skip(from).Take(LinesToATear)]).ToList();
                var first = from == 0;
                yield return new Piece(part.Max(c => c.Count) * look.Lead + (first ? 2 : 0) * padding, (canvas, x, y) =>
                {
                    if (first)
                    {
                        canvas.Rule(x, y, widths.Sum() + ColumnGap * (widths.Length - 1), 0.75, Paint.Hair);
                    }

                    for (var i = 0; i < part.Count; i++)
                    {
                        Cell(canvas, part[i], look, columns[i], (x, y + (first ? padding : 0), widths[i]));
                        x += widths[i] + ColumnGap;
                    }
                });
            }
        }
    }

    private static void Cell(PageCanvas canvas, IReadOnlyList<SetLine> lines, TextLook look, Column column, (double X, double Y, double Width) at)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            canvas.Line(lines[i], look, column.Figures ? at.X + at.Width - lines[i].Width : at.X, at.Y + i * look.Lead);
        }
    }
}
