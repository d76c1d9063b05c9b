using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>The head of the first page and the lines to sign on.</summary>
internal static class MastheadPieces
{
    private const double Gap = 20;
    private const double RuleWidth = 2.25;

    internal static IEnumerable<Piece> Of(Masthead head, BlockSetter set, double width)
    {
        var (title, body, small) = (set.Type.Title, set.Type.Body, set.Type.Body);
        var beside = head.Beside.Select((line, i) => (Prose)(i == 0 ? Prose.Bold(line) : Prose.Of(line))).ToList();
        var right = Math.Min(beside.Select(b => set.Setter.Widths(b, small).Whole).DefaultIfEmpty(0).Max() + 1, width * 0.45);
        var left = width - right - Gap;
        var titleLines = set.Setter.Lines(Prose.Of(head.Title), title, left);
        var below = set.Setter.Lines(Prose.Of(head.Below), body, left);
        var besideLines = beside.SelectMany(b => set.Setter.Lines(b, small, right)).ToList();
        var leftHeight = titleLines.Count * title.Lead + below.Count * body.Lead;
        var height = Math.Max(leftHeight, besideLines.Count * small.Lead);
        yield return new Piece(height + 10, (canvas, x, y) =>
        {
            canvas.Lines(titleLines, title, x, y + height - leftHeight);
            canvas.Lines(below, body, x, y + height - below.Count * body.Lead);
            var top = y + height - besideLines.Count * small.Lead;
            foreach (var line in besideLines)
            {
                canvas.Line(line, small, x + width - line.Width, top);
                top += small.Lead;
            }

            canvas.Rule(x, y + height + 8, width, RuleWidth, Paint.Ink);
        });
    }

    internal static IEnumerable<Piece> Of(Signatures signatures, BlockSetter set, double width)
    {
        var look = set.Type.Body;
        var half = (width - Gap) / 2;
        foreach (var pair in signatures.Entries.Chunk(2))
        {
            var sides = pair.Select(s => (
                For: set.Setter.Lines(Prose.Of(s.For), set.Type.Small, half),
                Signed: s.Signed.Length == 0 ? [] : set.Setter.Lines(Prose.Of(s.Signed), look, half))).ToList();
            var above = Math.Max(sides.Max(s => s.Signed.Count) * look.Lead, set.Type.Space(24));
            var height = above + 4 + sides.Max(s => s.For.Count) * set.Type.Small.Lead;
            yield return new Piece(height, (canvas, x, y) =>
            {
                for (var i = 0; i < sides.Count; i++)
                {
                    var at = x + i * (half + Gap);
                    canvas.Lines(sides[i].Signed, look, at, y + above - sides[i].Signed.Count * look.Lead);
                    canvas.Rule(at, y + above + 1, half, 1, Paint.Ink);
                    canvas.Lines(sides[i].For, set.Type.Small, at, y + above + 4);
                }
            })
            { Before = set.Type.Space(10) };
        }
    }
}
