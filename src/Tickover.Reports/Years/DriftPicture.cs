using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.Years;

/// <summary>How each place stood against the mean at hand-over and at the next visit: one line a place, so that what moved is seen at once.</summary>
public static class DriftPicture
{
    private const double Width = 366;
    private const double Height = 190;
    private const double LetterHeight = 16;
    private const double LineWidth = 3;
    private const double DotRadius = 5;
    private const double LeastSpan = 0.1;
    private static readonly Box Plot = new(64, 34, 130, 126);

    /// <summary>Draws the drift of one measure.</summary>
    /// <param name="drift">The drift.</param>
    /// <param name="prefix">Begins every id inside.</param>
    /// <returns>One svg element.</returns>
    public static string ToSvg(MeasureDrift drift, string prefix)
    {
        ArgumentNullException.ThrowIfNull(drift);
        var drawing = new SvgDrawing(prefix);
        Draw(drawing, drift);
        return drawing.ToSvg(new SvgFrame { Width = Width, Height = Height, ClassName = "drift-picture", Label = drift.Words });
    }

    internal static void Draw(IDrawing drawing, MeasureDrift drift)
    {
        var furthest = drift.Places.SelectMany(p => new[] { Math.Abs(p.BeforeDeviation), Math.Abs(p.NowDeviation) }).Append(LeastSpan).Max();
        var scale = new Scale(ScaleKind.Linear, (-furthest, furthest), (Plot.Bottom, Plot.Top));
        foreach (var level in Ticks.Nice(-furthest, furthest, 5))
        {
            var y = scale.ToPlace(level);
            drawing.Line(new ChartPoint(Plot.Left, y), new ChartPoint(Plot.Right, y), Look.Line(Paint.Hair, level == 0 ? 2 : 1));
            drawing.Text(ShownMeasure.Percent(level), new ChartPoint(Plot.Left - 10, y + 5), new Lettering { Anchor = Anchor.End, Paint = Paint.Ink2 });
        }

        drawing.Text("at hand-over", new ChartPoint(Plot.Left, Plot.Top - 14), new Lettering { Paint = Paint.Ink2 });
        drawing.Text("next visit", new ChartPoint(Plot.Right, Plot.Top - 14), new Lettering { Paint = Paint.Ink2 });
        foreach (var place in drift.Places)
        {
            var look = place.Moved ? Look.Line(Paint.Mark, LineWidth) : Look.Line(Paint.Ink, 1.5);
            var end = new ChartPoint(Plot.Right, scale.ToPlace(place.NowDeviation));
            drawing.Line(new ChartPoint(Plot.Left, scale.ToPlace(place.BeforeDeviation)), end, look);
            drawing.Circle(end, place.Moved ? DotRadius : DotRadius - 2, Look.Filled(place.Moved ? Paint.Mark : Paint.Ink));
        }

        Names(drawing, drift.Places, scale);
    }

    // Names beside the ends, from the top down, pushed apart so that none covers another.
    private static void Names(IDrawing drawing, IReadOnlyList<PlaceDrift> places, Scale scale)
    {
        var free = Plot.Top - LetterHeight;
        var left = places.Count;
        foreach (var place in places.OrderByDescending(p => p.NowDeviation))
        {
            var lowest = Height - (left-- * LetterHeight) + (LetterHeight / 2);
            var y = Math.Max(free + LetterHeight, Math.Min(scale.ToPlace(place.NowDeviation) + 5, lowest));
            free = y;
            drawing.Text(
                string.Create(CultureInfo.InvariantCulture, $"{Name(place.Place)}{(place.Moved ? ", moved" : "")}"),
                new ChartPoint(Plot.Right + 12, y),
                new Lettering { Anchor = Anchor.Start, Bold = place.Moved, Paint = place.Moved ? Paint.Mark : Paint.Ink });
        }
    }

    private static string Name(Place place) => place.Words();
}
