using System.Globalization;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Walls;

/// <summary>What colours and signs of the wall map mean.</summary>
internal static class WallLegend
{
    private const int Steps = 24;
    private const double BarHeight = 12;

    internal static void Draw(IDrawing drawing, WallView view, WallFrame frame)
    {
        var (box, thickness) = (frame.Legend, view.Survey.ThicknessMillimetres);
        if (frame.IsTurned)
        {
            drawing.Text("Turned: the left edge is at the top", new ChartPoint(frame.Width / 2, frame.Map.Bottom + 20), new Lettering { Paint = Paint.Ink2 });
        }

        var half = frame.IsPhone ? box.Width : box.Width / 2 - 12;
        for (var i = 0; i < Steps; i++)
        {
            drawing.Plate(new Box(box.Left + half * i / Steps, box.Top, half / Steps + 0.5, BarHeight), 0, Look.Filled(Cividis.PaintAt((i + 0.5) / Steps)));
        }

        var words = new Lettering { Paint = Paint.Ink2 };
        drawing.Text("0", new ChartPoint(box.Left, box.Top + 30), words with { Anchor = Anchor.Start });
        drawing.Text(frame.IsPhone ? "gone, mm" : "deepest pit, mm", new ChartPoint(box.Left + half / 2, box.Top + 30), words);
        drawing.Text($"{thickness.ToString("0.##", CultureInfo.InvariantCulture)}, through", new ChartPoint(box.Left + half, box.Top + 30), words with { Anchor = Anchor.End });
        Signs(drawing, frame.IsPhone ? new ChartPoint(box.Left, box.Top + 46) : new ChartPoint(box.Left + half + 24, box.Top - 6), frame.IsPhone, words with { Anchor = Anchor.Start });
    }

    private static void Signs(IDrawing drawing, ChartPoint at, bool isPhone, Lettering words)
    {
        var (row, column) = (24.0, isPhone ? 152.0 : 180.0);
        void Said(int i, Action<Box> sign, string text)
        {
            var box = new Box(at.X + column * (i % 2), at.Y + row * (i / 2), 18, 16);
            sign(box);
            drawing.Text(text, new ChartPoint(box.Right + 6, box.Bottom - 2), words);
        }

        Said(0, b =>
        {
            drawing.Plate(b, 2, Look.Outlined(Paint.Surface, Paint.Ink2));
            drawing.Plate(b, 2, Look.Filled(Paint.Hatched(Hatch.NoAnswer)));
        }, "not read");
        Said(1, b => drawing.Plate(b.Grown(-1), 0, new Look { Stroke = Paint.Ink, Width = 2.5, Dashes = (5, 3) }), "pad");
        Said(2, b =>
        {
            drawing.Plate(b.Grown(-2), 3, Look.Line(Paint.Black, 6));
            drawing.Plate(b.Grown(-2), 3, Look.Line(Paint.White, 3));
        }, "deepest read");
        Said(3, b => drawing.Path([new Polyline([new(b.Centre.X, b.Top), new(b.Right - 1, b.Centre.Y), new(b.Centre.X, b.Bottom), new(b.Left + 1, b.Centre.Y)], Closed: true)], new Look { Fill = Paint.White, Stroke = Paint.Black, Width = 2 }), isPhone ? "under the limit" : "less left than the limit");
    }
}
