using System.Globalization;
using Tickover.Physics.Supply;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Supply;

/// <summary>The line as it runs: tank, pipes at their heights, pump, filter, regulator, float chambers.</summary>
internal sealed class SupplyRun(IDrawing drawing, SupplyView view, SupplyFrame frame)
{
    private const double PipeEdge = 8;
    private const double PipeFuel = 4.5;
    private const double PumpRadius = 12;
    private const double Cup = 20;
    private const double NumberTop = 26;
    private const double NarrowestNumbered = 22;
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    private readonly Dictionary<string, double> _outlets = view.Case.Point.Parts.ToDictionary(part => part.Part.Name, part => frame.Height.ToPlace(part.Part.OutletHeightMetres), StringComparer.Ordinal);

    internal void Draw()
    {
        drawing.Text("The line at its heights, mm", new ChartPoint(0, 14), new Lettering { Anchor = Anchor.Start, Bold = true });
        Axis();
        Tank();
        foreach (var part in view.Case.Point.Parts)
        {
            Pipe(part.Part, Paint.MetalEdge, PipeEdge);
        }

        foreach (var part in view.Case.Point.Parts)
        {
            Pipe(part.Part, Paint.Fuel, PipeFuel);
        }

        var number = 0;
        foreach (var part in view.Case.Point.Parts)
        {
            Symbol(part);
            Number(part.Part, ++number);
        }
    }

    private void Axis()
    {
        const int most = 4;
        foreach (var tick in Ticks.Nice(1000 * frame.Height.Values.From, 1000 * frame.Height.Values.To, most))
        {
            var y = frame.Height.ToPlace(tick / 1000);
            drawing.Line(new ChartPoint(frame.Run.Left, y), new ChartPoint(frame.Run.Right, y), Look.Line(Paint.Hair, 1));
            drawing.Text(tick.ToString("0", C), new ChartPoint(frame.Run.Left - 6, y + 5), new Lettering { Anchor = Anchor.End, Paint = Paint.Ink2 });
        }
    }

    private void Tank()
    {
        const double wall = 3;
        var (left, right) = (frame.Run.Left + 4, SupplyFrame.TankRight - 4);
        var surface = frame.Height.ToPlace(view.Analysis.Supply.Line.TankSurfaceHeightMetres);
        var floor = Math.Min(frame.Run.Bottom + 6, Math.Max(surface, _outlets[view.Case.Point.Parts[0].Part.Name]) + 14);
        drawing.Path([new Polyline([new(left, surface), new(right, surface), new(right, floor), new(left, floor)], Closed: true)], Look.Filled(Paint.Fuel));
        drawing.Path([new Polyline([new(left, surface - 26), new(left, floor), new(right, floor), new(right, surface - 26)], Closed: false)], Look.Line(Paint.MetalEdge, wall));
        drawing.Text("Tank", new ChartPoint((left + right) / 2, surface - 8), new Lettering { Bold = true });
    }

    // From the outlet of the part before it, which for a branch lies further back.
    private void Pipe(SupplyPart part, Paint paint, double width)
    {
        var (left, right) = frame.Column(part);
        var to = _outlets[part.Name];
        var points = new List<ChartPoint>();
        if (part.After.Length == 0)
        {
            points.Add(new ChartPoint(SupplyFrame.TankRight - 14, to));
        }
        else
        {
            var before = view.Case.Point.Of(part.After)!.Part;
            points.Add(new ChartPoint(frame.Column(before).Right, _outlets[before.Name]));
            points.Add(new ChartPoint(left, _outlets[before.Name]));
        }

        points.Add(part.IsEnd ? new ChartPoint((left + right) / 2, to) : new ChartPoint(right, to));
        drawing.Path([new Polyline([.. points], Closed: false)], Look.Line(paint, width));
    }

    private void Symbol(PartPoint part)
    {
        var (left, right) = frame.Column(part.Part);
        var at = new ChartPoint((left + right) / 2, (Inlet(part.Part) + _outlets[part.Part.Name]) / 2);
        var body = new Look { Fill = Paint.Surface, Stroke = Paint.Ink, Width = 2 };
        switch (part.Part)
        {
            case FuelPump:
                drawing.Circle(at, PumpRadius, body);
                drawing.Path([new Polyline([new(at.X - 5, at.Y - 7), new(at.X + 8, at.Y), new(at.X - 5, at.Y + 7)], Closed: true)], Look.Filled(Paint.Ink));
                break;
            case FuelFilter:
                drawing.Plate(Box.Around(at, 18, 24), 4, body);
                drawing.Line(new ChartPoint(at.X, at.Y - 12), new ChartPoint(at.X, at.Y + 12), new Look { Stroke = Paint.Ink, Width = 2, Dashes = (3, 2) });
                break;
            case PressureRegulator:
                drawing.Plate(Box.Around(at, 20, 20), 2, body);
                drawing.Line(new ChartPoint(at.X - 7, at.Y + 7), new ChartPoint(at.X + 7, at.Y - 7), Look.Line(Paint.Ink, 2));
                break;
            case FloatValve:
                Chamber(new ChartPoint(at.X, _outlets[part.Part.Name]), view.Case.Point.Valves.First(valve => valve.Valve.Name.Equals(part.Part.Name, StringComparison.Ordinal)));
                break;
            case LineFitting or TankReturn:
                drawing.Circle(at with { Y = _outlets[part.Part.Name] }, 4.5, body);
                break;
            default:
                break;
        }
    }

    // A cup of fuel with its float; where the engine takes more than comes it stands nearly empty.
    private void Chamber(ChartPoint at, ValvePoint valve)
    {
        const double full = 0.72;
        const double low = 0.18;
        var cup = new Box(at.X - Cup / 2, at.Y, Cup, Cup);
        var depth = Cup * (valve.IsStarved ? low : full);
        drawing.Plate(cup, 0, Look.Filled(Paint.Surface));
        drawing.Plate(new Box(cup.Left, cup.Bottom - depth, Cup, depth), 0, Look.Filled(Paint.Fuel));
        drawing.Path([new Polyline([new(cup.Left, cup.Top), new(cup.Left, cup.Bottom), new(cup.Right, cup.Bottom), new(cup.Right, cup.Top)], Closed: false)], Look.Line(Paint.Ink, 2));
        if (valve.IsStarved)
        {
            drawing.Text("short", new ChartPoint(at.X, at.Y + Cup + 15), new Lettering { Bold = true, Halo = Paint.Surface });
        }
    }

    private double Inlet(SupplyPart part) => part.After.Length == 0 ? _outlets[part.Name] : _outlets[part.After];

    private void Number(SupplyPart part, int number)
    {
        var (left, right) = frame.Column(part);
        var chosen = part.Name.Equals(view.Chosen, StringComparison.Ordinal);
        var x = (left + right) / 2;
        if (right - left < NarrowestNumbered && number % 2 == 0 && !chosen)
        {
            return; // on a phone every other number, so that none touch
        }

        if (chosen)
        {
            drawing.Plate(new Box(x - 11, NumberTop - 1, 22, 20), 4, Look.Filled(Paint.Mark));
        }

        drawing.Text(number.ToString(C), new ChartPoint(x, NumberTop + 14), new Lettering { Bold = chosen, Paint = chosen ? Paint.OnMark : Paint.Ink2 });
    }
}
