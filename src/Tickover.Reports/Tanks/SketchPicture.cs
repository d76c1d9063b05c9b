using System.Globalization;
using Tickover.Physics.Tanks;
using Tickover.Reports.Charts;
using Tickover.Workshop.Tanks;
using Tickover.Workshop.Tanks.Sketching;

namespace Tickover.Reports.Tanks;

/// <summary>A tank while it is sketched: a sheet ruled in millimetres, the outline with its corners numbered, a length at every side, and what is wrong where it is wrong.</summary>
public static class SketchPicture
{
    private const double Square = 100;     // mm between ruled lines with a figure
    private const double HalfSquare = 50;
    private const double Dot = 12;
    private const double Beside = 16;      // from a side to the middle of its length

    /// <summary>Draws it for a page.</summary>
    /// <param name="sketch">The sketch.</param>
    /// <param name="answer">What comes of it.</param>
    /// <param name="board">The sheet.</param>
    /// <param name="idPrefix">Begins every id inside.</param>
    /// <returns>One svg element in the page's colours.</returns>
    public static string ToSvg(OutlineSketch sketch, SketchAnswer answer, SketchBoard board, string idPrefix)
    {
        ArgumentNullException.ThrowIfNull(sketch);
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(board);
        var drawing = new SvgDrawing(idPrefix);
        Ruled(drawing, board);
        Compass(drawing, sketch.View, board);
        ChartPoint[] corners = [.. sketch.Corners.Select(c => board.At(c.Right, c.Up))];
        Outline(drawing, sketch, answer, board, corners);
        List<Box> taken = [.. Faults(drawing, answer, corners)];
        taken.AddRange(Corners(drawing, corners));
        Lengths(drawing, sketch, corners, taken);
        return drawing.ToSvg(new SvgFrame { Width = board.Width, Height = board.Height, ClassName = "sketch", Label = Sentence(sketch, answer) });
    }

    /// <summary>The picture in words.</summary>
    /// <param name="sketch">The sketch.</param>
    /// <param name="answer">What comes of it.</param>
    /// <returns>A few short sentences.</returns>
    public static string Sentence(OutlineSketch sketch, SketchAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(sketch);
        ArgumentNullException.ThrowIfNull(answer);
        var corners = sketch.Corners.Count switch { 0 => "no corner yet", 1 => "one corner", var n => Line($"{n} corners") };
        var rest = answer.Tank is { } tank ? Line($"It holds {tank.Litres:0.0} l to the brim.") : string.Join(' ', answer.Problems.Concat(answer.Missing));
        return $"Sheet ruled in millimetres, {Seen(sketch.View)}: {corners}. {rest}";
    }

    /// <summary>From where a view is seen, in words.</summary>
    /// <param name="view">The view.</param>
    /// <returns>Half a sentence.</returns>
    public static string Seen(OutlineView view) => view switch
    {
        OutlineView.Rear => "seen from behind, the car's left at the left",
        OutlineView.Plan => "seen from above, the front at the top",
        _ => "seen from the side, the front at the right",
    };

    private static void Ruled(SvgDrawing drawing, SketchBoard board)
    {
        drawing.Plate(new Box(0, 0, board.Width, board.Height), 0, Look.Filled(Paint.Surface));
        var words = new Lettering { Paint = Paint.Ink2, Halo = Paint.Surface };
        var named = board.IsPhone ? 2 * Square : Square;
        foreach (var x in Marks(board.LeftMillimetres, board.RightMillimetres))
        {
            drawing.Line(board.At(x, board.LowMillimetres), board.At(x, board.HighMillimetres), Rule(x));
            if (x % named == 0 && x > board.LeftMillimetres + Square && x < board.RightMillimetres - HalfSquare)
            {
                drawing.Text(Whole(x), new ChartPoint(board.At(x, 0).X, board.Height - 6), words);
            }
        }

        foreach (var y in Marks(board.LowMillimetres, board.HighMillimetres))
        {
            drawing.Line(board.At(board.LeftMillimetres, y), board.At(board.RightMillimetres, y), Rule(y));
            if (y % named == 0 && y > board.LowMillimetres + HalfSquare && y < board.HighMillimetres - HalfSquare)
            {
                drawing.Text(Whole(y), new ChartPoint(6, board.At(0, y).Y + 5), words with { Anchor = Anchor.Start });
            }
        }

        drawing.Text("mm", new ChartPoint(6, board.Height - 6), words with { Anchor = Anchor.Start, Bold = true });
    }

    private static Look Rule(double at) => Look.Line(Paint.Hair, at == 0 ? 2.5 : at % Square == 0 ? 1.2 : 0.5);

    private static IEnumerable<double> Marks(double from, double to)
    {
        for (var at = Math.Ceiling(from / HalfSquare) * HalfSquare; at <= to; at += HalfSquare)
        {
            yield return at;
        }
    }

    private static void Compass(SvgDrawing drawing, OutlineView view, SketchBoard board)
    {
        var (left, right) = view switch { OutlineView.Side => ("rear of the car", "front"), _ => ("left of the car", "right") };
        var words = new Lettering { Bold = true, Halo = Paint.Surface };
        drawing.Text($"← {left}", new ChartPoint(8, 20), words with { Anchor = Anchor.Start });
        drawing.Text($"{right} →", new ChartPoint(board.Width - 8, 20), words with { Anchor = Anchor.End });
        if (view is OutlineView.Plan)
        {
            drawing.Text("↑ front", new ChartPoint(board.Width / 2, 20), words);
        }
    }

    // Full to the brim, since that is what it is asked for.
    private static void Outline(SvgDrawing drawing, OutlineSketch sketch, SketchAnswer answer, SketchBoard board, ChartPoint[] corners)
    {
        var isRounded = sketch.Corners.Any(c => c.Radius > 0);
        if (answer.Outline.Round.Count > 0)
        {
            var line = new Polyline([.. answer.Outline.Round.Select(p => Seen(sketch.View, p, board))], Closed: true);
            drawing.Path([line], new Look { Fill = Paint.Fuel, Stroke = Paint.MetalEdge, Width = 3.5 });
        }

        if (answer.Outline.Round.Count == 0 || isRounded)
        {
            var look = Look.Line(Paint.MetalEdge, isRounded && answer.Outline.Round.Count > 0 ? 1.2 : 3.5);
            drawing.Path([new Polyline(corners, Closed: corners.Length > 2)], isRounded && answer.Outline.Round.Count > 0 ? look with { Dashes = (4, 4) } : look);
        }
    }

    private static ChartPoint Seen(OutlineView view, OutlinePoint p, SketchBoard board)
    {
        var (across, up) = (TankUnits.Millimetres(p.Across), TankUnits.Millimetres(p.Up));
        return view switch
        {
            OutlineView.Rear => board.At(-across, up),
            OutlineView.Plan => board.At(-up, across),
            _ => board.At(across, up),
        };
    }

    // What is wrong is thick and dashed, with a diamond: outside a limit, told by shape before colour.
    private static Box[] Faults(SvgDrawing drawing, SketchAnswer answer, ChartPoint[] corners)
    {
        if (answer.Outline.Fault is not { Sides.Count: > 0 } fault || corners.Length < 3)
        {
            return [];
        }

        var bad = Paint.Theme("out");
        foreach (var side in fault.Sides)
        {
            var (from, to) = (corners[side], corners[(side + 1) % corners.Length]);
            drawing.Line(from, to, Look.Line(bad, 6) with { Dashes = (10, 5) });
        }

        var at = fault.Kind is OutlineFaultKind.Crossing ? Meeting(corners, fault.Sides[0], fault.Sides[1]) : Middle(corners[fault.Sides[0]], corners[(fault.Sides[0] + 1) % corners.Length]);
        const double size = 15;
        drawing.Path(
            [new Polyline([new(at.X, at.Y - size), new(at.X + size, at.Y), new(at.X, at.Y + size), new(at.X - size, at.Y)], Closed: true)],
            new Look { Fill = Paint.Surface, Stroke = bad, Width = 4 });
        var lettering = new Lettering { Bold = true, Paint = bad, Halo = Paint.Surface };
        var word = new ChartPoint(at.X, at.Y - size - 7);
        drawing.Text(Word(fault.Kind), word, lettering);
        return [Box.Around(at, 2 * size, 2 * size), Box.Around(word with { Y = word.Y - 5 }, lettering.WidthOf(Word(fault.Kind)), 18)];
    }

    private static string Word(OutlineFaultKind kind) => kind switch
    {
        OutlineFaultKind.Crossing => "crosses here",
        OutlineFaultKind.Radii => "radius too large",
        OutlineFaultKind.SamePlace => "same place",
        _ => "no area",
    };

    private static ChartPoint Middle(ChartPoint a, ChartPoint b) => new((a.X + b.X) / 2, (a.Y + b.Y) / 2);

    private static ChartPoint Meeting(ChartPoint[] corners, int first, int second)
    {
        var (a, b) = (corners[first], corners[(first + 1) % corners.Length]);
        var (c, d) = (corners[second], corners[(second + 1) % corners.Length]);
        var across = (b.X - a.X) * (d.Y - c.Y) - (b.Y - a.Y) * (d.X - c.X);
        if (across == 0)
        {
            return Middle(c, b); // one lies in the other
        }

        var part = ((c.X - a.X) * (d.Y - c.Y) - (c.Y - a.Y) * (d.X - c.X)) / across;
        return new ChartPoint(a.X + part * (b.X - a.X), a.Y + part * (b.Y - a.Y));
    }

    private static IEnumerable<Box> Corners(SvgDrawing drawing, ChartPoint[] corners)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            drawing.Circle(corners[i], Dot, new Look { Fill = Paint.Surface, Stroke = Paint.Ink, Width = 2.5 });
            drawing.Text(Whole(i + 1), new ChartPoint(corners[i].X, corners[i].Y + 5), new Lettering { Bold = true });
        }

        return corners.Select(c => Box.Around(c, 2 * Dot, 2 * Dot));
    }

    // Outside the side where there is room, inside else; a side too short for its figure has it in the list alone.
    private static void Lengths(SvgDrawing drawing, OutlineSketch sketch, ChartPoint[] corners, List<Box> taken)
    {
        var lettering = new Lettering { Bold = true, Halo = Paint.Surface };
        var turns = corners.Length > 2 ? -new Polyline(corners, Closed: true).SignedArea() : 1;
        for (var i = 0; i < (corners.Length > 2 ? corners.Length : corners.Length - 1); i++)
        {
            var (from, to) = (corners[i], corners[(i + 1) % corners.Length]);
            var length = Math.Sqrt((to.X - from.X) * (to.X - from.X) + (to.Y - from.Y) * (to.Y - from.Y));
            if (length <= 0)
            {
                continue;
            }

            var text = Figure(sketch.Side(i));
            var (outX, outY) = (Math.Sign(turns) * (from.Y - to.Y) / length, Math.Sign(turns) * (to.X - from.X) / length);
            var half = lettering.WidthOf(text) / 2;
            foreach (var way in new[] { 1, -1 })
            {
                var far = Beside * Math.Abs(outY) + (half + 8) * Math.Abs(outX);
                var middle = Middle(from, to);
                var box = Box.Around(new ChartPoint(middle.X + way * outX * far, middle.Y + way * outY * far), 2 * half, 18);
                if (!taken.Exists(t => t.Overlaps(box)))
                {
                    drawing.Text(text, new ChartPoint(box.Centre.X, box.Centre.Y + 5), lettering);
                    taken.Add(box);
                    break;
                }
            }
        }
    }

    private static string Figure(double millimetres) => millimetres.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Whole(double number) => number.ToString("0", CultureInfo.InvariantCulture).Replace('-', '−');

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
