using System.Globalization;
using Tickover.Physics.Linkages;
using Tickover.Reports.Charts;
using Tickover.Workshop.Tanks;
using Tickover.Workshop.Tanks.Parts;

namespace Tickover.Reports.Tanks;

/// <summary>Tanks to scale, cut through the middle, from behind and from the side, with fuel as it lies; beneath them the strapping curve.</summary>
public static class TankPicture
{
    private const double Mark = 0.05;      // m between marks of the stick
    private const double Beyond = 4;       // m: wide of every tank

    /// <summary>Draws it for a page.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>One svg element in the page's colours.</returns>
    public static string ToSvg(TankView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var frame = new TankFrame(view);
        var drawing = new SvgDrawing(view.IdPrefix);
        Draw(drawing, view, frame);
        return drawing.ToSvg(new SvgFrame { Width = frame.Width, Height = frame.Height, ClassName = "tank-picture", Label = TankSentence.Of(view) });
    }

    /// <summary>Draws it, on the page or on paper.</summary>
    internal static void Draw(IDrawing drawing, TankView view, TankFrame frame)
    {
        drawing.Text("From behind, to scale", new ChartPoint(frame.Rear.Left, frame.Rear.Top - 14), Heading);
        Pipes(drawing, view, frame);
        foreach (var tank in view.Analysis.Set.Tanks)
        {
            var ahead = tank.Shape.Middle.X;
            Tank(drawing, view, TankCut.Across(tank.Shape, ahead), p => frame.FromBehind(p with { X = ahead }), new SpaceVector(ahead, 0, 0), (0, 1));
            Fittings(drawing, view, tank, frame.FromBehind, tank.Name);
        }

        var left = frame.Beside.Shape.Middle.Y;
        drawing.Text($"{frame.Beside.Name}, from the left side", new ChartPoint(frame.Side.Left, frame.Side.Top - 14), Heading);
        Tank(drawing, view, TankCut.Along(frame.Beside.Shape, left), p => frame.FromSide(p with { Y = left }), new SpaceVector(0, left, 0), (1, 0));
        Fittings(drawing, view, frame.Beside, frame.FromSide, "front at the left");
        StrappingChart.Draw(drawing, view, frame.Chart);
    }

    private static Lettering Heading { get; } = new() { Anchor = Anchor.Start, Bold = true };

    // The fuel is the cut's own area, shown below the surface alone.
    private static void Tank(
        IDrawing drawing, TankView view, IReadOnlyList<IReadOnlyList<SpaceVector>> loops, Func<SpaceVector, ChartPoint> at, SpaceVector plane, (int Ahead, int Left) way)
    {
        var lines = loops.Select(l => new Polyline([.. l.Select(at)], Closed: true)).ToArray();
        SpaceVector Along(double far, double down)
        {
            var place = plane + Sideways(way, far);
            var up = view.Moment.Tilt.Up;
            return place with { Z = (view.Moment.LevelMetres - up.X * place.X - up.Y * place.Y) / up.Z - down };
        }

        drawing.Path(lines, Look.Filled(Paint.Sunken));
        var under = new Polyline([at(Along(-Beyond, 0)), at(Along(Beyond, 0)), at(Along(Beyond, Beyond)), at(Along(-Beyond, Beyond))], Closed: true);
        using (drawing.ClippedTo([under]))
        {
            drawing.Path(lines, Look.Filled(Paint.Fuel));
        }

        using (drawing.ClippedTo(lines))
        {
            drawing.Line(at(Along(-Beyond, 0)), at(Along(Beyond, 0)), Look.Line(Paint.FuelEdge, 3));
        }

        if (view.Reach is { } reach)
        {
            using (drawing.ClippedTo(lines))
            {
                drawing.Line(at(plane with { Z = reach } + Sideways(way, -Beyond)), at(plane with { Z = reach } + Sideways(way, Beyond)), Look.Line(Paint.Ink, 2) with { Dashes = (7, 5) });
            }
        }

        drawing.Path(lines, Look.Line(Paint.MetalEdge, 3));
    }

    private static SpaceVector Sideways((int Ahead, int Left) way, double far) => new(far * way.Ahead, far * way.Left, 0);

    private static void Fittings(IDrawing drawing, TankView view, TankPart tank, Func<SpaceVector, ChartPoint> at, string name)
    {
        var set = view.Analysis.Set;
        if (ReferenceEquals(tank, set.Tanks[view.Moment.Stick]))
        {
            Stick(drawing, tank, at);
        }

        if (tank.PickUp is { } pickUp)
        {
            PickUp(drawing, at(pickUp.Mouth), view.Moment.CoverMillimetres[set.Tanks.ToList().IndexOf(tank)] > TankUnits.Millimetres(pickUp.DrawDownMetres));
        }

        var foot = at(new SpaceVector(tank.Shape.Middle.X, tank.Shape.Middle.Y, tank.Shape.Lowest.Z));
        drawing.Text(name, new ChartPoint(foot.X, foot.Y + 36), new Lettering { Paint = Paint.Ink2 });
    }

    private static void Stick(IDrawing drawing, TankPart tank, Func<SpaceVector, ChartPoint> at)
    {
        var height = tank.Shape.Highest.Z - tank.Foot.Z;
        drawing.Line(at(tank.Foot), at(tank.Foot with { Z = tank.Foot.Z + height }), Look.Line(Paint.Ink, 2));
        for (var i = 1; i * Mark < height; i++)
        {
            var point = at(tank.Foot with { Z = tank.Foot.Z + i * Mark });
            var isNamed = i % 2 == 0;
            drawing.Line(point with { X = point.X - (isNamed ? 8 : 5) }, point with { X = point.X + (isNamed ? 8 : 5) }, Look.Line(Paint.Ink, 2));
            if (isNamed)
            {
                var label = TankUnits.Millimetres(i * Mark).ToString("0", CultureInfo.InvariantCulture);
                drawing.Text(label, new ChartPoint(point.X + 12, point.Y + 5), new Lettering { Anchor = Anchor.Start, Halo = Paint.Surface });
            }
        }
    }

    // Filled where it is covered, an open ring with a word where it draws air.
    private static void PickUp(IDrawing drawing, ChartPoint mouth, bool isCovered)
    {
        drawing.Circle(mouth, 6, new Look { Fill = isCovered ? Paint.Ink : Paint.Surface, Stroke = Paint.Ink, Width = 2.5 });
        drawing.Text(isCovered ? "pick-up" : "draws air", new ChartPoint(mouth.X, mouth.Y + 22), new Lettering { Bold = !isCovered, Halo = Paint.Surface });
    }

    private static void Pipes(IDrawing drawing, TankView view, TankFrame frame)
    {
        var mouths = view.Analysis.Set.Tanks.Select(t => t.CrossPipe).OfType<SpaceVector>().OrderByDescending(m => m.Y).Select(frame.FromBehind).ToArray();
        for (var i = 1; i < mouths.Length; i++)
        {
            var down = frame.Rear.Bottom + 12;
            var line = new Polyline([mouths[i - 1], mouths[i - 1] with { Y = down }, mouths[i] with { Y = down }, mouths[i]], Closed: false);
            drawing.Path([line], Look.Line(Paint.MetalEdge, 9));
            drawing.Path([line], Look.Line(Paint.Fuel, 4));
        }
    }
}
