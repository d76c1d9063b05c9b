using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Workshop.Linkages;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Reports.Linkages;

/// <summary>The linkage from above: shafts, levers, rods, and every bore with its plate as seen along the bore.</summary>
internal sealed class LinkagePlan(SvgDrawing drawing, LinkageView view, LinkageFrame frame)
{
    private const double ShaftWidth = 7;
    private const double LeverWidth = 5;
    private const double RodWidth = 3;
    private const double MarkedWidth = 5;
    private const double Ball = 4.5;
    private const double NameBelow = 20;
    private const double NameTowardsDriver = 0.3;
    private const int RimSteps = 40;
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    private readonly HashSet<int> _marked = view.Setting is LinkageSetting.AsAdvised
        ? []
        : [.. view.Analysis.Equalised.Moves.Where(m => m.Adjuster.Kind is not LinkageAdjusterKind.Clamp).Select(m => m.Adjuster.Index)];

    internal void Draw(LinkageMoment moment, LinkageStance stance)
    {
        drawing.Text("From above, to scale", new ChartPoint(0, 16), new Lettering { Anchor = Anchor.Start, Bold = true, Size = 16 });
        drawing.Text(string.Create(C, $"pedal {view.Down * 100:0}{'\u202F'}% down"), new ChartPoint(frame.Width, 16), new Lettering { Anchor = Anchor.End, Paint = Paint.Ink2 });
        Front();
        for (var s = 0; s < stance.Shafts.Count; s++)
        {
            Shaft(stance, s);
        }

        Bores(moment, stance);
        Levers(stance);
        Links(stance);
        Names(stance);
        LinkageLabels.Draw(drawing, view, frame, moment, stance);
    }

    private void Front()
    {
        var length = frame.IsPhone ? 24 : 30;
        var tail = frame.IsPhone ? new ChartPoint(10, 56) : new ChartPoint(44, frame.Plan.Top + 22);
        var to = frame.IsPhone ? tail with { Y = tail.Y - length } : tail with { X = tail.X - length };
        drawing.Line(tail, to, Look.Line(Paint.Ink2, 2));
        var (dx, dy) = frame.IsPhone ? (5, 8) : (8, 5);
        drawing.Path(
            [new Polyline([new(to.X + dx, to.Y + dy), to, frame.IsPhone ? new(to.X - dx, to.Y + dy) : new(to.X + dx, to.Y - dy)], Closed: false)],
            Look.Line(Paint.Ink2, 2));
        drawing.Text("front", frame.IsPhone ? new ChartPoint(24, 50) : new ChartPoint(14, frame.Plan.Top + 14), new Lettering { Anchor = Anchor.Start, Paint = Paint.Ink2 });
        var bar = frame.Length(100);
        var at = new ChartPoint(frame.Width - bar - 2, frame.IsPhone ? 54 : frame.Plan.Top + 22);
        drawing.Line(at, at with { X = at.X + bar }, Look.Line(Paint.Ink2, 2));
        drawing.Text("100\u202Fmm", new ChartPoint(at.X + bar / 2, at.Y - 6), new Lettering { Paint = Paint.Ink2 });
    }

    private void Shaft(LinkageStance stance, int index)
    {
        var (from, to) = (frame.At(stance.Shafts[index].From), frame.At(stance.Shafts[index].To));
        if (Distance(from, to) < 2 * ShaftWidth)
        {
            // An upright shaft, seen on its end.
            drawing.Circle(frame.At(view.Linkage.Shafts[index].At), ShaftWidth, Look.Outlined(Paint.Metal, Paint.MetalEdge));
            return;
        }

        drawing.Path([Bar(from, to, ShaftWidth)], Look.Outlined(Paint.Metal, Paint.MetalEdge));
    }

    private void Bores(LinkageMoment moment, LinkageStance stance)
    {
        var carburettors = view.Linkage.Carburettors;
        for (var i = 0; i < carburettors.Count; i++)
        {
            var (from, to) = (frame.At(stance.Shafts[carburettors[i]].From), frame.At(stance.Shafts[carburettors[i]].To));
            var along = Math.Atan2(to.Y - from.Y, to.X - from.X);
            var radius = frame.Length(view.Linkage.Shafts[carburettors[i]].Throttle!.BoreMillimetres / 2);
            foreach (var plate in stance.Plates[carburettors[i]])
            {
                var centre = frame.At(plate);
                drawing.Circle(centre, radius, Look.Outlined(Paint.Air, Paint.AirEdge));
                drawing.Path([Ellipse(centre, radius, Math.Abs(Math.Cos(double.DegreesToRadians(moment.Plates[i].Degrees))), along)], Look.Outlined(Paint.Theme("metal-2"), Paint.MetalEdge));
            }

            // The spindle runs over its plates.
            drawing.Path([Bar(from, to, 3)], Look.Filled(Paint.MetalEdge));
        }
    }

    private void Levers(LinkageStance stance)
    {
        foreach (var (foot, ball) in stance.Levers.SelectMany(l => l))
        {
            var (a, b) = (frame.At(foot), frame.At(ball));
            drawing.Line(a, b, Look.Line(Paint.MetalEdge, LeverWidth));
            drawing.Circle(a, LeverWidth - 1, Look.Filled(Paint.MetalEdge));
        }
    }

    private void Links(LinkageStance stance)
    {
        for (var i = 0; i < view.Linkage.Links.Count; i++)
        {
            if (view.Linkage.Links[i] is RodPart rod)
            {
                Rod(frame.At(stance.Levers[rod.From][rod.FromLever].Ball), frame.At(stance.Levers[rod.To][rod.ToLever].Ball), _marked.Contains(i));
            }
            else if (view.Linkage.Links[i] is CouplingPart coupling)
            {
                Coupling(stance, coupling, _marked.Contains(i));
            }
        }
    }

    // What is to be set is named in our mark's colour; of the rest only shafts, so that the plan stays quiet.
    private void Names(LinkageStance stance)
    {
        foreach (var rod in _marked.Select(i => view.Linkage.Links[i]).OfType<RodPart>())
        {
            var (a, b) = (frame.At(stance.Levers[rod.From][rod.FromLever].Ball), frame.At(stance.Levers[rod.To][rod.ToLever].Ball));
            var part = frame.IsPhone ? NameTowardsDriver : 0.5; // on a phone the far end has the carburettor's own words
            Name(rod.Name, new ChartPoint(a.X + part * (b.X - a.X), a.Y + part * (b.Y - a.Y) + (frame.IsPhone ? 5 : NameBelow)), Paint.Mark, bold: true);
        }

        for (var s = 0; s < view.Linkage.Shafts.Count && !frame.IsPhone; s++)
        {
            if (view.Linkage.Shafts[s].Throttle is null)
            {
                var ends = new[] { frame.At(stance.Shafts[s].From), frame.At(stance.Shafts[s].To) };
                Name(view.Linkage.Shafts[s].Name, new ChartPoint(ends.Average(p => p.X), ends.Min(p => p.Y) - Ball * 2.5), Paint.Ink2, bold: false);
            }
        }
    }

    private void Name(string name, ChartPoint at, Paint paint, bool bold)
    {
        var lettering = new Lettering { Paint = paint, Bold = bold, Halo = Paint.Surface };
        var half = lettering.WidthOf(name) / 2;
        drawing.Text(name, at with { X = Math.Clamp(at.X, half, frame.Width - half) }, lettering);
    }

    private void Rod(ChartPoint a, ChartPoint b, bool marked)
    {
        drawing.Line(a, b, marked ? new Look { Stroke = Paint.Mark, Width = MarkedWidth, Dashes = (9, 4) } : Look.Line(Paint.Ink2, RodWidth));
        foreach (var end in new[] { a, b })
        {
            drawing.Circle(end, Ball, new Look { Fill = Paint.Surface, Stroke = marked ? Paint.Mark : Paint.Ink2, Width = 2 });
        }
    }

    private void Coupling(LinkageStance stance, CouplingPart coupling, bool marked)
    {
        var (a, b) = (frame.At(Nearest(stance, coupling.From, coupling.To)), frame.At(Nearest(stance, coupling.To, coupling.From)));
        var centre = new ChartPoint((a.X + b.X) / 2, (a.Y + b.Y) / 2);
        drawing.Plate(Box.Around(centre, 16, 20), 3, new Look { Fill = marked ? Paint.Mark : Paint.Metal, Stroke = marked ? Paint.Mark : Paint.MetalEdge, Width = 2 });
        var slot = marked ? Paint.OnMark : Paint.MetalEdge;
        drawing.Line(centre with { X = centre.X - 4 }, centre with { X = centre.X + 4 }, Look.Line(slot, 2));
    }

    // The end of a shaft that faces another.
    private static Place Nearest(LinkageStance stance, int shaft, int other)
    {
        var (from, to) = stance.Shafts[shaft];
        var target = stance.Shafts[other].From;
        double Away(Place p) => Math.Pow(p.Ahead - target.Ahead, 2) + Math.Pow(p.Left - target.Left, 2) + Math.Pow(p.Up - target.Up, 2);
        return Away(from) < Away(to) ? from : to;
    }

    private static double Distance(ChartPoint a, ChartPoint b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));

    private static Polyline Bar(ChartPoint a, ChartPoint b, double width)
    {
        var length = Distance(a, b);
        var (x, y) = ((b.Y - a.Y) / length * width / 2, -(b.X - a.X) / length * width / 2);
        return new Polyline([new(a.X + x, a.Y + y), new(b.X + x, b.Y + y), new(b.X - x, b.Y - y), new(a.X - x, a.Y - y)], Closed: true);
    }

    private static Polyline Ellipse(ChartPoint centre, double radius, double narrow, double turned)
    {
        var (sin, cos) = Math.SinCos(turned);
        return new Polyline(
            [
                .. Enumerable.Range(0, RimSteps).Select(k =>
                {
                    var (s, c) = Math.SinCos(2 * Math.PI * k / RimSteps);
                    var (x, y) = (radius * c, radius * narrow * s);
                    return new ChartPoint(centre.X + x * cos - y * sin, centre.Y + x * sin + y * cos);
                }),
            ],
            Closed: true);
    }
}
