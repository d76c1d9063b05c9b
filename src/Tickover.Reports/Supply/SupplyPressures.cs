using System.Globalization;
using Tickover.Physics.Supply;
using Tickover.Reports.Charts;
using Tickover.Workshop.Supply;

namespace Tickover.Reports.Supply;

/// <summary>The pressure along the line, column for column beneath it, and what boils.</summary>
internal sealed class SupplyPressures(IDrawing drawing, SupplyView view, SupplyFrame frame)
{
    private readonly PressureUnit _unit = view.Analysis.Supply.Unit;
    private readonly double _air = view.Case.Point.Duty.AirPascals;

    internal void Draw()
    {
        drawing.Text($"Pressure along it, {SupplyUnits.Symbol(_unit)} above the air, {view.Case.Name}", new ChartPoint(0, frame.Chart.Top - 14), new Lettering { Anchor = Anchor.Start, Bold = true });
        Axis();
        using (drawing.ClippedTo([Polyline.Rectangle(frame.Chart)]))
        {
            foreach (var part in view.Case.Point.Parts)
            {
                Boiling(part);
            }

            foreach (var part in view.Case.Point.Parts)
            {
                Course(part);
            }
        }

        Ends();
    }

    private void Axis()
    {
        const int most = 6;
        foreach (var tick in Ticks.Nice(frame.Pressure.Values.From, frame.Pressure.Values.To, most))
        {
            var y = frame.Pressure.ToPlace(tick);
            drawing.Line(new ChartPoint(frame.Chart.Left, y), new ChartPoint(frame.Chart.Right, y), Look.Line(tick == 0 ? Paint.Ink2 : Paint.Hair, tick == 0 ? 1.5 : 1));
            drawing.Text(tick.ToString("0.##", CultureInfo.InvariantCulture).Replace('-', '\u2212'), new ChartPoint(frame.Chart.Left - 6, y + 5), new Lettering { Anchor = Anchor.End, Paint = Paint.Ink2 });
        }

        var any = view.Case.Point.Parts.Any(part => Gauge(part.VapourPascals) > frame.Pressure.Values.From);
        drawing.Text(
            any ? "Hatched: boils below this" : "Boils far below what is drawn",
            new ChartPoint(frame.Chart.Left, frame.Chart.Bottom + 22), new Lettering { Anchor = Anchor.Start, Paint = Paint.Ink2 });
    }

    private void Boiling(PartPoint part)
    {
        var level = Gauge(part.VapourPascals);
        if (level <= frame.Pressure.Values.From)
        {
            return;
        }

        var (left, right) = frame.Column(part.Part);
        var top = frame.Pressure.ToPlace(Math.Min(level, frame.Pressure.Values.To));
        drawing.Plate(new Box(left, top, right - left, frame.Chart.Bottom - top), 0, new Look { Fill = Paint.Hatched(Hatch.Casing), Stroke = Paint.Ink2, Width = 1 });
    }

    private void Course(PartPoint part)
    {
        var (left, right) = frame.Column(part.Part);
        var to = Place(part.StaticPascals);
        var before = view.Case.Point.Of(part.Part.After);
        var from = before is null ? frame.Pressure.ToPlace(Gauge(_air + view.Analysis.Supply.Line.TankGaugePascals)) : Place(before.StaticPascals);
        if (before is not null && Math.Abs(frame.Column(before.Part).Right - left) > 1)
        {
            // A branch: the same pressure carried on to its column.
            drawing.Line(new ChartPoint(frame.Column(before.Part).Right, from), new ChartPoint(left, from), new Look { Stroke = Paint.FuelEdge, Width = 2, Dashes = (4, 4) });
        }

        var end = part.Part.IsEnd ? (left + right) / 2 : right;
        drawing.Path([new Polyline([new(left, from), new(end, to)], Closed: false)], Look.Line(Paint.FuelEdge, 4));
    }

    private void Ends()
    {
        foreach (var valve in view.Case.Point.Valves)
        {
            var (left, right) = frame.Column(valve.Valve);
            var at = new ChartPoint((left + right) / 2, Place(_air + valve.InletGaugePascals));
            drawing.Circle(at, 6, new Look { Fill = valve.IsStarved ? Paint.Ink : Paint.Surface, Stroke = Paint.Ink, Width = 2.5 });
        }

        var last = view.Case.Point.Valves[^1];
        var (_, edge) = frame.Column(last.Valve);
        drawing.Text(
            SupplyWords.Pressure(_unit, last.InletGaugePascals),
            new ChartPoint(edge, Place(_air + last.InletGaugePascals) + 26), new Lettering { Anchor = Anchor.End, Bold = true, Halo = Paint.Surface });
    }

    private double Gauge(double pascals) => SupplyUnits.FromPascals(_unit, pascals - _air);

    private double Place(double pascals) => frame.Pressure.ToPlace(Math.Clamp(Gauge(pascals), frame.Pressure.Values.From, frame.Pressure.Values.To));
}
