using System.Globalization;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Balance;

/// <summary>The ring of one barrel: figure in the middle, tick at the top for the mean, arc to the right more air, to the left less.</summary>
internal static class RingDrawing
{
    /// <summary>Deviation at the end of the travel, as a part of the mean.</summary>
    internal const double FullTravel = 0.20;

    /// <summary>Angle at the end of the travel, degrees from the top.</summary>
    internal const double TravelDegrees = 135;

    private const double DiscPart = 0.66;
    private const double BracketPart = 0.94;
    private const double SmallestFigure = 14;
    private const double FigurePart = 0.52;
    private static readonly (double Inner, double Outer) Track = (0.72, 0.88);

    /// <summary>Where on the ring a deviation stands, degrees from the top; at the end of the travel for what lies beyond.</summary>
    internal static double Degrees(double deviationPart) => Math.Clamp(deviationPart / FullTravel, -1, 1) * TravelDegrees;

    /// <summary>Draws a ring.</summary>
    /// <param name="drawing">What is drawn on.</param>
    /// <param name="ring">What it shows.</param>
    /// <param name="centre">Its middle.</param>
    /// <param name="reach">How far it reaches.</param>
    internal static void Draw(IDrawing drawing, RingView ring, ChartPoint centre, double reach)
    {
        var isRead = ring.Figure.Length > 0;
        drawing.Circle(centre, reach, Look.Filled(Paint.Surface));
        drawing.Path([Arcs.Line(centre, reach * (Track.Inner + Track.Outer) / 2, -TravelDegrees, TravelDegrees)], Look.Line(Paint.Hair, reach * 0.05));
        Disc(drawing, ring, centre, reach);
        if (ring.LimitPart is { } limit)
        {
            drawing.Path([Piece(centre, reach, -Degrees(limit), Degrees(limit))], new Look { Fill = Paint.Band, Stroke = Paint.MetalEdge, Width = 1 });
        }

        if (isRead && ring.DeviationPart is { } deviation)
        {
            Deviation(drawing, ring, deviation, centre, reach);
        }

        drawing.Line(Arcs.At(centre, reach * (Track.Inner - 0.02), 0), Arcs.At(centre, reach * (Track.Outer + 0.03), 0), Look.Line(Paint.Ink, Math.Max(2, reach * 0.06)));
        var size = Math.Max(SmallestFigure, reach * FigurePart);
        // The number first: read aloud it is "Barrel 4 3.6 −11 % low", as the name says.
        drawing.Text(ring.Barrel.ToString(CultureInfo.InvariantCulture), centre with { Y = centre.Y + reach + 1 }, new Lettering { Bold = ring.IsNext, Paint = ring.IsNext ? Paint.Mark : Paint.Ink2 });
        drawing.Text(ring.Figure, centre with { Y = centre.Y + size * 0.35 }, new Lettering { Size = size, Bold = true, Paint = ring.IsHollow ? Paint.Ink2 : Paint.Ink });
    }

    /// <summary>What is said beside or below a ring: the deviation, and a word where it is not plainly within.</summary>
    internal static (string Percent, string Word) Words(RingView ring)
    {
        var percent = ring.Figure.Length > 0 && ring.DeviationPart is { } part ? (Math.Round(part * 100) > 0 ? "+" : "") + Shown.Percent(part) : "";
        return ring.Standing switch
        {
            _ when ring.IsNext && ring.Figure.Length == 0 => ("read me", ""),
            RingStanding.Low => (percent, "low"),
            RingStanding.High => (percent, "high"),
            RingStanding.CannotTell => (percent, "unsure"),
            _ => (percent, ""),
        };
    }

    private static void Disc(IDrawing drawing, RingView ring, ChartPoint centre, double reach)
    {
        var isFull = ring.Figure.Length > 0 && !ring.IsHollow;
        drawing.Circle(centre, reach * DiscPart, isFull
            ? Look.Outlined(Paint.Air, Paint.Air) with { Opacity = 0.6 }
            : new Look { Fill = Paint.Surface, Stroke = ring.Figure.Length > 0 ? Paint.AirEdge : Paint.MetalEdge, Width = 1.5, Dashes = ring.Figure.Length > 0 ? (5, 4) : (2, 4) });
        if (ring.IsNext)
        {
            drawing.Circle(centre, reach * DiscPart, Look.Line(Paint.Mark, Math.Max(3, reach * 0.07)));
        }
    }

    private static void Deviation(IDrawing drawing, RingView ring, double deviation, ChartPoint centre, double reach)
    {
        var isOut = ring.Standing is RingStanding.Low or RingStanding.High;
        var paint = isOut ? Paint.Theme("out") : Paint.AirEdge;
        var at = Degrees(deviation);
        if (Math.Abs(at) > 0.5)
        {
            drawing.Path([Piece(centre, reach, Math.Min(0, at), Math.Max(0, at))], ring.IsHollow ? new Look { Stroke = paint, Width = 2 } : Look.Filled(paint));
        }

        if (Math.Abs(deviation) > FullTravel)
        {
            var way = Math.Sign(deviation);
            Arcs.Draw(drawing, Arcs.Arrow(centre, reach * (Track.Inner + Track.Outer) / 2, at, at + way * 14, reach * 0.13), paint, 2);
        }

        if (ring.BandPart is { } band)
        {
            Bracket(drawing, centre, reach, Degrees(deviation - band), Degrees(deviation + band));
        }
    }

    private static void Bracket(IDrawing drawing, ChartPoint centre, double reach, double from, double to)
    {
        var look = Look.Line(Paint.Ink, 2);
        var radius = reach * BracketPart;
        drawing.Path(
            [
                Arcs.Line(centre, radius, from, to),
                new Polyline([Arcs.At(centre, radius - 0.05 * reach, from), Arcs.At(centre, radius + 0.05 * reach, from)], Closed: false),
                new Polyline([Arcs.At(centre, radius - 0.05 * reach, to), Arcs.At(centre, radius + 0.05 * reach, to)], Closed: false),
            ],
            look);
    }

    private static Polyline Piece(ChartPoint centre, double reach, double from, double to) =>
        Arcs.Piece(centre, (reach * Track.Inner, reach * Track.Outer), from, to);
}
