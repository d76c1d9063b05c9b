using Tickover.Reports.Charts;

namespace Tickover.Reports.StripDown;

/// <summary>Condition by shape: within a limit round, to be watched a ring, soon a triangle, outside a diamond.</summary>
internal static class ConditionMark
{
    /// <summary>Draws a shape.</summary>
    internal static void Draw(IDrawing drawing, ChartPoint at, double size, Condition condition)
    {
        var r = size / 2;
        switch (condition)
        {
            case Condition.Within:
                drawing.Circle(at, r * 0.7, Look.Filled(Paint.Ink));
                break;
            case Condition.Watch:
                drawing.Circle(at, r * 0.8, new Look { Fill = Paint.Surface, Stroke = Paint.Ink, Width = 3 });
                break;
            case Condition.Soon:
                Shape(drawing, Paint.Surface, new(at.X, at.Y - r), new(at.X + r, at.Y + (0.8 * r)), new(at.X - r, at.Y + (0.8 * r)));
                break;
            default:
                Shape(drawing, Paint.Ink, new(at.X, at.Y - r), new(at.X + r, at.Y), new(at.X, at.Y + r), new(at.X - r, at.Y));
                break;
        }
    }

    private static void Shape(IDrawing drawing, Paint fill, params ChartPoint[] points) =>
        drawing.Path([new Polyline(points, Closed: true)], new Look { Fill = fill, Stroke = fill == Paint.Ink ? Paint.Surface : Paint.Ink, Width = fill == Paint.Ink ? 1.5 : 2.5 });
}
