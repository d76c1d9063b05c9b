using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Workshop.Linkages;

namespace Tickover.Reports.Linkages;

/// <summary>Beside each carburettor: its name with the look of its line, its angle, its air against the mean and the word for it.</summary>
internal static class LinkageLabels
{
    private const double Line = 18;
    private const double Sample = 24;
    private const double Gap = 8;

    internal static void Draw(SvgDrawing drawing, LinkageView view, LinkageFrame frame, LinkageMoment moment, LinkageStance stance)
    {
        var carburettors = view.Linkage.Carburettors;
        for (var i = 0; i < carburettors.Count; i++)
        {
            var radius = frame.Length(view.Linkage.Shafts[carburettors[i]].Throttle!.BoreMillimetres / 2);
            var ends = new[] { stance.Shafts[carburettors[i]].From, stance.Shafts[carburettors[i]].To }.Select(frame.At)
                .Concat(stance.Plates[carburettors[i]].Select(frame.At).SelectMany(p => new[] { new ChartPoint(p.X - radius, p.Y - radius), new ChartPoint(p.X + radius, p.Y + radius) }))
                .ToArray();
            var box = new Box(ends.Min(p => p.X), ends.Min(p => p.Y), ends.Max(p => p.X) - ends.Min(p => p.X), ends.Max(p => p.Y) - ends.Min(p => p.Y));
            One(drawing, frame, box, (i, view.Analysis.Names[i]), (moment.Plates[i], moment.LimitPart));
        }
    }

    private static void One(SvgDrawing drawing, LinkageFrame frame, Box box, (int Number, string Name) carburettor, (PlateMoment Plate, double Limit) state)
    {
        var words = Words(state.Plate, state.Limit);
        var outside = Math.Abs(state.Plate.DeviationPart) > state.Limit;
        var name = new Lettering { Bold = true, Anchor = Anchor.Start, Halo = Paint.Surface };
        var below = new Lettering { Anchor = Anchor.Start, Halo = Paint.Surface };
        var width = Math.Max(Sample + 6 + name.WidthOf(carburettor.Name), below.WidthOf(words) + (outside ? 16 : 0));
        ChartPoint at;
        if (frame.IsPhone)
        {
            at = box.Centre.X < frame.Plan.Centre.X + 1 ? new ChartPoint(Math.Max(0, box.Left - Gap - width), box.Centre.Y) : new ChartPoint(Math.Min(frame.Width - width, box.Right + Gap), box.Centre.Y);
        }
        else
        {
            var left = Math.Clamp(box.Centre.X - width / 2, 0, frame.Width - width);
            at = new ChartPoint(left, box.Centre.Y >= frame.Plan.Centre.Y - 1 ? box.Bottom + Line : box.Top - Line - Gap);
        }

        drawing.Line(at with { Y = at.Y - 5 }, new ChartPoint(at.X + Sample, at.Y - 5), LinkageLines.Look(carburettor.Number));
        drawing.Text(carburettor.Name, at with { X = at.X + Sample + 6 }, name);
        var second = new ChartPoint(at.X, at.Y + Line);
        if (outside)
        {
            Diamond(drawing, new ChartPoint(second.X + 6, second.Y - 5));
            second = second with { X = second.X + 16 };
        }

        drawing.Text(words, second, below);
    }

    private static void Diamond(SvgDrawing drawing, ChartPoint at) => drawing.Path(
        [new Polyline([new(at.X, at.Y - 6), new(at.X + 6, at.Y), new(at.X, at.Y + 6), new(at.X - 6, at.Y)], Closed: true)],
        new Look { Stroke = Paint.Ink, Width = 2 });

    private static string Words(PlateMoment plate, double limit)
    {
        var outside = Math.Abs(plate.DeviationPart) <= limit ? "" : plate.DeviationPart > 0 ? " high" : " low";
        var air = Shown.Percent(plate.DeviationPart);
        return string.Create(CultureInfo.InvariantCulture, $"{plate.Degrees:0.0}°, {(plate.DeviationPart >= 0.005 ? "+" : "")}{air}{outside}");
    }
}
