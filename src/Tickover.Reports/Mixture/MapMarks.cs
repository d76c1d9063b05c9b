using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>The marks on the map: measured points and the ring round the place tapped.</summary>
internal static class MapMarks
{
    internal const double RingRadius = 21;

    // Area of a point per reading, and the bounds that keep it visible and out of its neighbours' way, drawing units
    private const double AreaAReading = 8;
    private const double SmallestRadius = 6;
    private const double LargestRadius = 16;

    // The plot is half as wide there
    private const double PartOnAPhone = 0.65;

    internal static double RadiusFor(int count, PictureSize size = PictureSize.Full) =>
        Math.Clamp(Math.Sqrt(Math.Max(0, count) * AreaAReading / Math.PI), SmallestRadius, LargestRadius) * (size == PictureSize.Full ? 1 : PartOnAPhone);

    internal static void Measured(IDrawing drawing, MixtureView view, MapFrame frame, LambdaScale scale)
    {
        foreach (var point in view.Measured.Where(p => double.IsFinite(p.Lambda)))
        {
            var place = frame.Place(point.Spot);
            if (frame.Plot.Contains(place))
            {
                var radius = RadiusFor(point.Count, view.Size);
                var look = new Look { Fill = Cividis.PaintAt(scale.PartOf(point.Lambda)), Stroke = Paint.White, Width = 1.6 };
                if (point.Off is null)
                {
                    drawing.Circle(place, radius + 1.2, Look.Line(Paint.Black, 1.2));
                    drawing.Circle(place, radius, look);
                }
                else
                {
                    drawing.Path([Diamond(place, radius + 3.2)], Look.Line(Paint.Black, 1.2));
                    drawing.Path([Diamond(place, radius + 1.6)], look);
                }
            }
        }
    }

    // Outside a limit is a diamond, here as everywhere
    private static Polyline Diamond(ChartPoint at, double half) =>
        new([new(at.X, at.Y - half), new(at.X + half, at.Y), new(at.X, at.Y + half), new(at.X - half, at.Y)], Closed: true);

    internal static void Ring(IDrawing drawing, ChartPoint place)
    {
        // Paper's marking-out blue in every theme: it lies on data colours, which do not change either
        drawing.Circle(place, RingRadius, Look.Line(Paint.White, 9));
        drawing.Circle(place, RingRadius, Look.Line(Paint.Data("#2a2e9a"), 4.5));
        drawing.Circle(place, 3, new Look { Fill = Paint.Data("#2a2e9a"), Stroke = Paint.White, Width = 1.5 });
    }
}
