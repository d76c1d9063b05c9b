using Tickover.Reports.Charts;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.Paper;

/// <summary>The mark of a severity: octagon, triangle or ring. Its shape tells it without colour, and its word always stands beside it.</summary>
internal static class SeverityMark
{
    /// <summary>The word.</summary>
    internal static string Word(Severity severity) => severity switch
    {
        Severity.Unsafe => "Unsafe",
        Severity.Soon => "Soon",
        _ => "Watch",
    };

    /// <summary>The colour of mark and word.</summary>
    internal static Paint Paint(Severity severity) => Charts.Paint.Theme(Word(severity).ToLowerInvariant());

    /// <summary>Draws the mark into a square.</summary>
    internal static void Draw(IDrawing drawing, Severity severity, Box square)
    {
        var paint = Paint(severity);
        var radius = square.Width / 2;
        switch (severity)
        {
            case Severity.Unsafe:
                drawing.Path([Polygon(square.Centre, radius, corners: 8, turned: Math.PI / 8)], Look.Filled(paint));
                break;
            case Severity.Soon:
                drawing.Path([new Polyline([new(square.Centre.X, square.Top), new(square.Right, square.Bottom), new(square.Left, square.Bottom)], Closed: true)], Look.Filled(paint));
                break;
            default:
                drawing.Circle(square.Centre, radius * 0.72, Look.Line(paint, radius * 0.5));
                break;
        }
    }

    private static Polyline Polygon(ChartPoint centre, double radius, int corners, double turned) => new(
        [.. Enumerable.Range(0, corners).Select(i => turned + 2 * Math.PI * i / corners)
            .Select(a => new ChartPoint(centre.X + radius * Math.Cos(a), centre.Y + radius * Math.Sin(a)))],
        Closed: true);
}
