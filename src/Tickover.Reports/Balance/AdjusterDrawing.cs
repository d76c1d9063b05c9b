using Tickover.Reports.Charts;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Reports.Balance;

/// <summary>The things to turn, where they are; the one to turn next in marking-out blue with the way round.</summary>
internal static class AdjusterDrawing
{
    private const double Head = 8;
    private const double MarkedHead = 12;
    private const double Halo = 18;
    private static readonly Look Metal = Look.Outlined(Paint.Surface, Paint.MetalEdge);

    /// <summary>Whether a turn goes clockwise as one looks at the head; null where it does not go round.</summary>
    /// <remarks>Right-hand threads, as all of these are (common practice): in is clockwise.</remarks>
    internal static bool? IsClockwise(Adjuster adjuster, double turns) => (turns >= 0 ? adjuster.More : adjuster.Less) switch
    {
        "in" => true,
        "out" => false,
        _ => null,
    };

    /// <summary>Draws one.</summary>
    internal static void Draw(IDrawing drawing, AdjusterPlace place, double? turns, bool isOff)
    {
        if (place.Form == AdjusterForm.Rod)
        {
            Rod(drawing, place, turns, isOff);
            return;
        }

        if (place.Form == AdjusterForm.Coupling)
        {
            Coupling(drawing, place.At, turns is not null);
        }

        if (turns is { } way)
        {
            Marked(drawing, place, way);
        }
        else if (place.Form is AdjusterForm.Nut)
        {
            drawing.Path([Hexagon(place.At, Head + 1)], Metal);
        }
        else if (place.Form is not AdjusterForm.Coupling)
        {
            ScrewHead(drawing, place.At, place.Form == AdjusterForm.Knob ? Head + 4 : Head, Metal, Paint.MetalEdge);
        }
    }

    private static void Marked(IDrawing drawing, AdjusterPlace place, double turns)
    {
        drawing.Circle(place.At, Halo, new Look { Fill = Paint.Surface, Stroke = Paint.Mark, Width = 3 });
        var clockwise = IsClockwise(place.Adjuster, turns);
        if (place.Form is AdjusterForm.Nut)
        {
            drawing.Path([Hexagon(place.At, MarkedHead)], Look.Filled(Paint.Mark));
        }
        else
        {
            ScrewHead(drawing, place.At, MarkedHead - 2, Look.Filled(Paint.Mark), Paint.OnMark);
        }

        if (clockwise is { } way)
        {
            var sign = way ? 1 : -1;
            Arcs.Draw(drawing, Arcs.Arrow(place.At, Halo + 6, -50 * sign, 55 * sign, 7), Paint.Mark, 3);
        }
    }

    private static void ScrewHead(IDrawing drawing, ChartPoint at, double radius, Look look, Paint slot)
    {
        drawing.Circle(at, radius, look);
        drawing.Line(Arcs.At(at, radius * 0.75, 60), Arcs.At(at, radius * 0.75, 240), Look.Line(slot, 2));
    }

    // A box with a spring on the spindle: it joins two carburettors and its screw moves one against the other.
    private static void Coupling(IDrawing drawing, ChartPoint at, bool isMarked)
    {
        drawing.Plate(Box.Around(at, 34, 20), 3, isMarked ? new Look { Fill = Paint.Surface, Stroke = Paint.Mark, Width = 3 } : Metal);
        double[] steps = [-12, -8, -4, 0, 4, 8, 12];
        drawing.Path([new Polyline([.. steps.Select((x, k) => new ChartPoint(at.X + x, at.Y + (k % 2 == 0 ? 5 : -5)))], Closed: false)], Look.Line(Paint.MetalEdge, 1.5));
    }

    private static void Rod(IDrawing drawing, AdjusterPlace place, double? turns, bool isOff)
    {
        var paint = turns is null ? Paint.MetalEdge : Paint.Mark;
        drawing.Line(place.From, place.To, Look.Line(Paint.Surface, 8));
        drawing.Line(place.From, place.To, new Look { Stroke = paint, Width = turns is null ? 4 : 5, Dashes = isOff ? (4, 5) : turns is null ? null : (9, 5) });
        foreach (var end in new[] { place.From, place.To })
        {
            drawing.Circle(end, 6, new Look { Fill = isOff ? null : Paint.Surface, Stroke = paint, Width = 2.5 });
        }

        var isLevel = Math.Abs(place.From.Y - place.To.Y) < Math.Abs(place.From.X - place.To.X);
        drawing.Plate(Box.Around(place.At, isLevel ? 22 : 14, isLevel ? 14 : 22), 2, turns is null ? Metal : Look.Outlined(Paint.Mark, Paint.Mark));
        if (turns is { } way)
        {
            Lengthen(drawing, place, way >= 0 ? place.Adjuster.More : place.Adjuster.Less, isLevel);
        }
    }

    /// <summary>Arrows beside a rod: apart for longer, towards each other for shorter.</summary>
    private static void Lengthen(IDrawing drawing, AdjusterPlace place, string word, bool isLevel)
    {
        var inwards = string.Equals(word, "shorter", StringComparison.Ordinal);
        foreach (var side in new[] { -1, 1 })
        {
            var (near, far) = (side * 8.0, side * 28.0);
            var (from, to) = inwards ? (far, near) : (near, far);
            const double beside = 16;
            ChartPoint Place(double along) => isLevel ? new(place.At.X + along, place.At.Y + beside) : new(place.At.X - beside, place.At.Y + along);
            Arcs.Draw(drawing, Arcs.Arrow(Place(from), Place(to), 8), Paint.Mark, 3);
        }
    }

    internal static Polyline Hexagon(ChartPoint at, double radius) => new([.. Enumerable.Range(0, 6).Select(k => Arcs.At(at, radius, 30 + 60 * k))], Closed: true);
}
