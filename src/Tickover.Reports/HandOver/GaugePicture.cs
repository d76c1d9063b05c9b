using Tickover.Reports.Charts;

namespace Tickover.Reports.HandOver;

/// <summary>The fuel gauge explained in one picture: the tanks as vessels, the fuel, the pipe between them, the float. A diagram, not to scale.</summary>
public static class GaugePicture
{
    /// <summary>Height, drawing units.</summary>
    public const double Height = 132;

    private const double TankWidth = 100;
    private const double Apart = 88;
    private const double Rim = 14;
    private const double Level = 40;
    private const double Floor = 102;
    private const double PipeY = 119;
    private const double Corner = 10;
    private const double Wall = 3;
    private const double PipeInset = 18;

    /// <summary>Width, drawing units.</summary>
    /// <param name="view">What is shown.</param>
    /// <returns>The width.</returns>
    public static double Width(GaugeView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return Math.Max(view.Tanks.Count, 1) * (TankWidth + Apart) - Apart + 12;
    }

    /// <summary>Draws the picture as SVG.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>One svg element.</returns>
    public static string ToSvg(GaugeView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var drawing = new SvgDrawing(view.IdPrefix);
        Draw(drawing, view);
        return drawing.ToSvg(new SvgFrame { Width = Width(view), Height = Height, ClassName = "gauge-picture", Label = Sentence(view) });
    }

    /// <summary>The picture in a sentence.</summary>
    /// <param name="view">What is shown.</param>
    /// <returns>Such as "Two tanks and the pipe between them; the float sits in the left one."</returns>
    public static string Sentence(GaugeView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var floats = view.Tanks.Where(t => t.HasFloat).Select(t => t.Name).ToList();
        var tanks = view.Tanks.Count == 1 ? "One tank" : $"{view.Tanks.Count} tanks and the pipe between them";
        return floats.Count == 0 ? $"{tanks}." : $"{tanks}; a float sits in: {string.Join(", ", floats)}.";
    }

    internal static void Draw(IDrawing drawing, GaugeView view)
    {
        for (var i = 0; i < view.Tanks.Count; i++)
        {
            Vessel(drawing, view.Tanks[i], 6 + i * (TankWidth + Apart));
        }

        for (var i = 1; i < view.Tanks.Count; i++)
        {
            Pipe(drawing, 6 + i * (TankWidth + Apart), i == 1 ? view.Pipe : "");
        }
    }

    private static void Vessel(IDrawing drawing, GaugeVessel tank, double x)
    {
        drawing.Path([new Polyline([new(x, Level), new(x + TankWidth, Level), .. Bottom(x)], Closed: true)], Look.Filled(Paint.Fuel));
        drawing.Path([new Polyline([new(x + TankWidth, Rim), .. Bottom(x), new(x, Rim)], Closed: false)], Look.Line(Paint.MetalEdge, Wall));
        var middle = x + TankWidth / 2;
        drawing.Text(tank.Name, new ChartPoint(middle, tank.Holds.Length > 0 ? 70 : 80), new Lettering { Size = 15, Bold = true });
        if (tank.Holds.Length > 0)
        {
            drawing.Text(tank.Holds, new ChartPoint(middle, 90), new Lettering { Size = 15, Bold = true });
        }

        if (tank.HasFloat)
        {
            var body = new Look { Fill = Paint.Surface, Stroke = Paint.Ink, Width = 2.5 };
            drawing.Line(new ChartPoint(middle, Rim), new ChartPoint(middle, Level), Look.Line(Paint.Ink, 2.5));
            drawing.Plate(new Box(middle - 16, Level - 6, 32, 13), 6, body);
            drawing.Text("float", new ChartPoint(x + 8, 30), new Lettering { Anchor = Anchor.Start });
        }
    }

    // From the right wall round the floor to the left wall
    private static IEnumerable<ChartPoint> Bottom(double x)
    {
        const int steps = 6;
        for (var i = 0; i <= steps; i++)
        {
            yield return Round(new ChartPoint(x + TankWidth - Corner, Floor - Corner), Math.PI / 2 * i / steps);
        }

        for (var i = 0; i <= steps; i++)
        {
            yield return Round(new ChartPoint(x + Corner, Floor - Corner), Math.PI / 2 * (1 + (double)i / steps));
        }
    }

    private static ChartPoint Round(ChartPoint centre, double angle) => new(centre.X + Corner * Math.Cos(angle), centre.Y + Corner * Math.Sin(angle));

    private static void Pipe(IDrawing drawing, double right, string bore)
    {
        var (from, to) = (right - Apart - PipeInset, right + PipeInset);
        drawing.Path([new Polyline([new(from, Floor - 2), new(from, PipeY), new(to, PipeY), new(to, Floor - 2)], Closed: false)], Look.Line(Paint.MetalEdge, 11));
        drawing.Path([new Polyline([new(from, Floor - 4), new(from, PipeY), new(to, PipeY), new(to, Floor - 4)], Closed: false)], Look.Line(Paint.Fuel, 6.5));
        if (bore.Length > 0)
        {
            drawing.Text(bore, new ChartPoint(right - Apart / 2, 100), new Lettering());
        }
    }
}
