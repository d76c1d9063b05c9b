namespace Tickover.Reports.Paper.Pdf;

/// <summary>Shares the width of a table among its columns by what they hold.</summary>
internal static class ColumnWidths
{
    // Figures far from their names are hard to follow along the line
    private const double NarrowStretch = 1.5;

    /// <summary>Widths that add up to no more than the room, pt.</summary>
    internal static double[] Of(Table table, BlockSetter set, double room)
    {
        var count = table.Columns.Count;
        var (whole, word) = (new double[count], new double[count]);
        for (var i = 0; i < count; i++)
        {
            Widen(Prose.Of(table.Columns[i].Heading), i);
            foreach (var row in table.Rows)
            {
                Widen(row[i], i);
            }
        }

        return Shared(whole, word, room, table.Narrow ? NarrowStretch : double.MaxValue);

        void Widen(Prose cell, int i)
        {
            var (cellWhole, cellWord) = set.Setter.Widths(cell, table.Small ? set.Type.Small : set.Type.Body);
            (whole[i], word[i]) = (Math.Max(whole[i], cellWhole), Math.Max(word[i], cellWord));
        }
    }

    /// <summary>Every column gets its longest word, and what is left goes where text would otherwise break most.</summary>
    internal static double[] Shared(double[] whole, double[] word, double room, double most = double.MaxValue)
    {
        var wish = whole.Sum();
        if (wish <= room)
        {
            // Figures keep to themselves, words take the rest
            var share = wish > 0 ? Math.Min((room - wish) / wish, most - 1) : 0;
            return [.. whole.Select(w => w * (1 + share))];
        }

        // A narrow column gets all it wishes; what is left is shared among the wide ones by their wishes
        var got = new double[whole.Length];
        var open = Enumerable.Range(0, whole.Length).ToList();
        var left = room;
        while (open.Where(i => whole[i] <= left / open.Count).ToList() is { Count: > 0 } content)
        {
            content.ForEach(i => got[i] = whole[i]);
            left -= content.Sum(i => whole[i]);
            open = [.. open.Except(content)];
        }

        // Of the wide ones each gets its longest word, unless that would starve the others. The rest goes by the root of what they hold:
        // one very long cell then costs lines, not the width of its neighbours
        var least = open.ToDictionary(i => i, i => Math.Clamp(word[i], 1, left / open.Count * 1.5));
        var (needed, weights) = (least.Values.Sum(), open.Sum(i => Math.Sqrt(whole[i])));
        foreach (var i in open)
        {
            got[i] = needed >= left ? least[i] * left / needed : least[i] + (left - needed) * Math.Sqrt(whole[i]) / weights;
        }

        return got;
    }
}
