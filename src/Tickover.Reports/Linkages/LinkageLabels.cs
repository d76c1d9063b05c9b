using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Workshop.Linkages;

namespace Tickover.Reports.Linkages;

/// <summary>Beside each carburettor: its name with the look of its line, its angle, its air against the mean and the word for it.</summary>
internal static class LinkageLabels
{
    private const double Line = 18;
    private const double Sample = 24;
    private const double Mark = 16;

    /// <summary>Between a label and what it stands beside.</summary>
    internal const double Gap = 8;

    /// <summary>Room a name takes with the look of its line before it.</summary>
    internal static double NameWidth(string name) => Sample + 6 + new Lettering { Bold = true }.WidthOf(name);

    internal static void Draw(SvgDrawing drawing, LinkageView view, LinkageFrame frame, LinkageMoment moment, LinkageStance stance)
    {
        var boxes = view.Linkage.Carburettors.Select(c => Around(view, frame, stance, c)).ToArray();
        for (var i = 0; i < boxes.Length; i++)
        {
            // Above, unless another carburettor stands there or the middle of the plan does.
            var above = frame.IsPhone
                ? !boxes.Any(b => b.Bottom <= boxes[i].Top && Math.Abs(b.Centre.X - boxes[i].Centre.X) < boxes[i].Width)
                : boxes[i].Centre.Y < frame.Plan.Centre.Y - 1;
            One(drawing, frame, (boxes[i], above), (i, view.Analysis.Names[i]), (moment.Plates[i], moment.LimitPart));
        }
    }

    // Spindle and bores of a carburettor on the plan.
    private static Box Around(LinkageView view, LinkageFrame frame, LinkageStance stance, int shaft)
    {
        var radius = frame.Length(view.Linkage.Shafts[shaft].Throttle!.BoreMillimetres / 2);
        var ends = new[] { stance.Shafts[shaft].From, stance.Shafts[shaft].To }.Select(frame.At)
            .Concat(stance.Plates[shaft].Select(frame.At).SelectMany(p => new[] { new ChartPoint(p.X - radius, p.Y - radius), new ChartPoint(p.X + radius, p.Y + radius) }))
            .ToArray();
        return new Box(ends.Min(p => p.X), ends.Min(p => p.Y), ends.Max(p => p.X) - ends.Min(p => p.X), ends.Max(p => p.Y) - ends.Min(p => p.Y));
    }

    private static void One(SvgDrawing drawing, LinkageFrame frame, (Box Box, bool Above) place, (int Number, string Name) carburettor, (PlateMoment Plate, double Limit) state)
    {
        var outside = Math.Abs(state.Plate.DeviationPart) > state.Limit;
        var (angle, air) = (string.Create(CultureInfo.InvariantCulture, $"{state.Plate.Degrees:0.0}°"), Air(state.Plate, state.Limit));
        // Two carburettors side by side leave a phone too little room for both in one line.
        string[] words = frame.IsPhone && !frame.HasRoomBeside ? [angle, air] : [$"{angle}, {air}"];
        var name = new Lettering { Bold = true, Anchor = Anchor.Start, Halo = Paint.Surface };
        var below = new Lettering { Anchor = Anchor.Start, Halo = Paint.Surface };
        var at = Place(frame, place, Math.Max(NameWidth(carburettor.Name), words.Max(below.WidthOf) + (outside ? Mark : 0)), words.Length);
        drawing.Line(at with { Y = at.Y - 5 }, new ChartPoint(at.X + Sample, at.Y - 5), LinkageLines.Look(carburettor.Number));
        drawing.Text(carburettor.Name, at with { X = at.X + Sample + 6 }, name);
        for (var k = 0; k < words.Length; k++)
        {
            var line = new ChartPoint(at.X, at.Y + (k + 1) * Line);
            if (outside && k == words.Length - 1)
            {
                Diamond(drawing, new ChartPoint(line.X + 6, line.Y - 5));
                line = line with { X = line.X + Mark };
            }

            drawing.Text(words[k], line, below);
        }
    }

    // Beside it on a phone where there is room beside it, as with three in a line; else above or below.
    private static ChartPoint Place(LinkageFrame frame, (Box Box, bool Above) place, double width, int lines)
    {
        var box = place.Box;
        if (frame.HasRoomBeside)
        {
            return new ChartPoint(box.Left - Gap >= width ? box.Left - Gap - width : box.Right + Gap, box.Centre.Y);
        }

        return new ChartPoint(Math.Clamp(box.Centre.X - width / 2, 0, frame.Width - width), place.Above ? box.Top - lines * Line - Gap : box.Bottom + Line);
    }

    private static void Diamond(SvgDrawing drawing, ChartPoint at) => drawing.Path(
        [new Polyline([new(at.X, at.Y - 6), new(at.X + 6, at.Y), new(at.X, at.Y + 6), new(at.X - 6, at.Y)], Closed: true)],
        new Look { Stroke = Paint.Ink, Width = 2 });

    private static string Air(PlateMoment plate, double limit)
    {
        var outside = Math.Abs(plate.DeviationPart) <= limit ? "" : plate.DeviationPart > 0 ? " high" : " low";
        return $"{(plate.DeviationPart >= 0.005 ? "+" : "")}{Shown.Percent(plate.DeviationPart)}{outside}";
    }
}
