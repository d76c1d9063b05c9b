using System.Globalization;
using Tickover.Physics.Tanks;
using Tickover.Reports.Charts;
using Tickover.Workshop.Tanks;

namespace Tickover.Reports.Tanks;

/// <summary>Litres over the dip, the fill as read, and where the fuel stands now.</summary>
internal static class StrappingChart
{
    private const int Points = 80;

    internal static void Draw(IDrawing drawing, TankView view, Box box)
    {
        var stick = view.Moment.Stick;
        var lines = view.Analysis.Table;
        var (last, full) = (lines[^1].Tanks[stick].DipMillimetres, lines[^1].Litres);
        var (right, up) = (new Scale(ScaleKind.Linear, (0, last), (box.Left, box.Right)), new Scale(ScaleKind.Linear, (0, full), (box.Bottom, box.Top)));
        ChartPoint At(double dip, double litres) => new(right.ToPlace(Math.Clamp(dip, 0, last)), up.ToPlace(Math.Clamp(litres, 0, full)));
        drawing.Text("Litres over the dip, car level", new ChartPoint(box.Left - 40, box.Top - 14), new Lettering { Anchor = Anchor.Start, Bold = true });
        Axes(drawing, box, right, up);
        drawing.Path([new Polyline([.. Enumerable.Range(0, Points + 1).Select(i => full * i / Points).Select(l => At(Dip(view, l), l))], Closed: false)], Look.Line(Paint.Mark, 2.5));
        foreach (var row in view.Analysis.Fill is { } fill ? FillRow.Of(fill) : [])
        {
            drawing.Circle(At(row.DipMillimetres, row.Litres), 5, new Look { Fill = row.StandsOut ? Paint.Ink : Paint.Surface, Stroke = Paint.Ink, Width = 2 });
        }

        var now = At(Dip(view, view.Litres), view.Litres);
        drawing.Line(now with { Y = box.Bottom }, now, Look.Line(Paint.FuelEdge, 2));
        drawing.Line(now with { X = box.Left }, now, Look.Line(Paint.FuelEdge, 2));
        drawing.Circle(now, 7, new Look { Fill = Paint.Fuel, Stroke = Paint.FuelEdge, Width = 2.5 });
    }

    private static double Dip(TankView view, double litres) => TankMoment.Of(view.Analysis, litres, Tilt.Level)!.DipMillimetres;

    private static void Axes(IDrawing drawing, Box box, Scale right, Scale up)
    {
        var words = new Lettering { Paint = Paint.Ink2 };
        foreach (var tick in Ticks.Nice(up.Values.From, up.Values.To, 6))
        {
            var y = up.ToPlace(tick);
            drawing.Line(new ChartPoint(box.Left, y), new ChartPoint(box.Right, y), Look.Line(Paint.Hair, 1));
            drawing.Text(tick.ToString("0.#", CultureInfo.InvariantCulture), new ChartPoint(box.Left - 6, y + 5), words with { Anchor = Anchor.End });
        }

        foreach (var tick in Ticks.Nice(right.Values.From, right.Values.To, 6))
        {
            var x = right.ToPlace(tick);
            drawing.Line(new ChartPoint(x, box.Bottom), new ChartPoint(x, box.Bottom + 5), Look.Line(Paint.Ink2, 1));
            drawing.Text(tick.ToString("0", CultureInfo.InvariantCulture), new ChartPoint(x, box.Bottom + 19), words);
        }

        drawing.Text("dip, mm", new ChartPoint(box.Right, box.Bottom + 38), words with { Anchor = Anchor.End });
    }
}
