using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>Blocks that hold blocks: side by side, in a frame, or kept together.</summary>
internal static class FramePieces
{
    private const double ColumnGap = 21;
    private const double Padding = 11;
    private const double FrameWidth = 2.25;
    private static readonly Paint FramePaint = Paint.Theme("unsafe");

    internal static IEnumerable<Piece> Of(SideBySide pair, BlockSetter set, double width)
    {
        var half = (width - ColumnGap) / 2;
        var (left, right) = (set.Pieces(pair.Left, half), set.Pieces(pair.Right, half));
        var height = Math.Max(Height(left), Height(right));
        if (height > set.PageHeight * 0.9)
        {
            return [.. set.Pieces(pair.Left, width), .. set.Pieces(pair.Right, width)];
        }

        var outline = left.Concat(right).Select(p => p.Outline).FirstOrDefault(o => o is not null);
        return
        [
            new Piece(height, (canvas, x, y) =>
            {
                Stack(canvas, left, x, y);
                Stack(canvas, right, x + half + ColumnGap, y);
            })
            { Before = First(left, right), Outline = outline },
        ];
    }

    internal static IEnumerable<Piece> Of(Together together, BlockSetter set, double width)
    {
        var pieces = set.Pieces(together.Blocks, width);
        return pieces.Select((p, i) => i < pieces.Count - 1 ? p with { WithNext = true } : p);
    }

    internal static IEnumerable<Piece> Of(Callout callout, BlockSetter set, double width)
    {
        var inside = width - 2 * (Padding + FrameWidth);
        var look = set.Type.Heading(2) with { Paint = FramePaint };
        var title = set.Setter.Lines(Prose.Of(callout.Title), look, inside);
        var head = new Piece(title.Count * look.Lead, (canvas, x, y) => canvas.Lines(title, look, x, y)) { WithNext = true };
        IReadOnlyList<Piece> pieces = [head, .. set.Pieces(callout.Blocks, inside)];
        var height = Height(pieces) + 2 * Padding;
        var before = set.Type.Space(14);
        if (height > set.PageHeight * 0.9)
        {
            // Too long for one page: a bar at the left goes along instead of a frame
            return pieces.Select((p, i) => Barred(p, i == 0 ? before : p.Before) with { Outline = i == 0 ? callout.Title : null });
        }

        return
        [
            new Piece(height, (canvas, x, y) =>
            {
                var half = FrameWidth / 2;
                canvas.Frame(new Box(x + half, y + half, width - FrameWidth, height - FrameWidth), 6, FrameWidth, FramePaint);
                Stack(canvas, pieces, x + Padding + FrameWidth, y + Padding);
            })
            { Before = before, Outline = callout.Title },
        ];
    }

    private static Piece Barred(Piece piece, double before) => piece with
    {
        Before = 0,
        Height = piece.Height + before,
        Draw = (canvas, x, y) =>
        {
            canvas.Bar(x + FrameWidth / 2, y, piece.Height + before, FrameWidth, FramePaint);
            piece.Draw(canvas, x + Padding + FrameWidth, y + before);
        },
    };

    private static double Height(IReadOnlyList<Piece> pieces) => pieces.Select((p, i) => p.Height + (i == 0 ? 0 : p.Before)).Sum();

    private static double First(IReadOnlyList<Piece> left, IReadOnlyList<Piece> right) =>
        Math.Max(left.Count > 0 ? left[0].Before : 0, right.Count > 0 ? right[0].Before : 0);

    private static void Stack(PageCanvas canvas, IReadOnlyList<Piece> pieces, double x, double y)
    {
        for (var i = 0; i < pieces.Count; i++)
        {
            y += i == 0 ? 0 : pieces[i].Before;
            pieces[i].Draw(canvas, x, y);
            y += pieces[i].Height;
        }
    }
}
