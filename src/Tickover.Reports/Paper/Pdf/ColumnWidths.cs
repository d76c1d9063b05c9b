namespace Tickover.Reports.Paper.Pdf;

/// <summary>Shares the width of a table among its columns by what they hold.</summary>
internal static class ColumnWidths
{
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

        return Shared(whole, word, room);

        void Widen(Prose cell, int i)
        {
            var (cellWhole, cellWord) = set.Setter.Widths(cell, set.Type.Body);
            (whole[i], word[i]) = (Math.Max(whole[i], cellWhole), Math.Max(word[i], cellWord));
        }
    }

    /// <summary>Every column gets its longest word, and what is left goes where text would otherwise break most.</summary>
    internal static double[] Shared(double[] whole, double[] word, double room)
    {
        var wish = whole.Sum();
        if (wish <= room)
        {
            // Figures keep to themselves, words take the rest
            var share = wish > 0 ? (room - wish) / wish : 0;
            return [.. whole.Select(w => w * (1 + share))];
        }

        // One very long word must not starve the other columns
        var least = word.Select(w => Math.Min(w, room / word.Length * 1.5)).ToArray();
        var needed = least.Sum();
        if (needed >= room)
        {
            return [.. least.Select(w => w * room / needed)];
        }

        var open = whole.Zip(least, (w, l) => Math.Max(w - l, 0)).ToArray();
        var sum = open.Sum();
        return [.. least.Zip(open, (l, o) => l + (sum > 0 ? (room - needed) * o / sum : 0))];
    }
}
