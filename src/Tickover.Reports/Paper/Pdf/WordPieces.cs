namespace Tickover.Reports.Paper.Pdf;

/// <summary>Headings, paragraphs and lists as pieces. No first or last line of a paragraph stands alone on a page.</summary>
internal static class WordPieces
{
    private const double Indent = 14;

    internal static IEnumerable<Piece> Of(Heading heading, BlockSetter set, double width)
    {
        var look = set.Type.Heading(heading.Level);
        var lines = set.Setter.Lines(Prose.Of(heading.Text), look, width);
        yield return new Piece(lines.Count * look.Lead, (canvas, x, y) => canvas.Lines(lines, look, x, y))
        {
            Before = set.Type.Space(heading.Level == 2 ? 16 : 10),
            WithNext = true,
            Outline = heading.Level == 2 ? heading.Text : null,
        };
    }

    internal static IEnumerable<Piece> Of(Paragraph paragraph, BlockSetter set, double width)
    {
        var look = set.Type.For(paragraph.Voice);
        return Lines(set.Setter.Lines(paragraph.Words, look, width), look, set.Type.Space(5));
    }

    internal static IEnumerable<Piece> Of(Items items, BlockSetter set, double width)
    {
        var look = set.Type.Body;
        var number = 0;
        foreach (var entry in items.Entries)
        {
            number++;
            var lines = set.Setter.Lines(entry, look, width - Indent);
            var sign = set.Setter.Lines(Prose.Of(items.Numbered ? $"{number}." : "\u2022"), look, double.MaxValue)[0];
            var first = true;
            foreach (var piece in Lines(lines, look, set.Type.Space(3)))
            {
                var signed = first;
                first = false;
                yield return piece with
                {
                    Draw = (canvas, x, y) =>
                    {
                        if (signed)
                        {
                            canvas.Line(sign, look, x, y);
                        }

                        piece.Draw(canvas, x + Indent, y);
                    },
                };
            }
        }
    }

    /// <summary>Lines as pieces: the first two stay together, and the last two.</summary>
    internal static IEnumerable<Piece> Lines(IReadOnlyList<SetLine> lines, TextLook look, double before)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            yield return new Piece(look.Lead, (canvas, x, y) => canvas.Line(line, look, x, y))
            {
                Before = i == 0 ? before : 0,
                WithNext = i + 1 < lines.Count && (i == 0 || i == lines.Count - 2),
            };
        }
    }
}
