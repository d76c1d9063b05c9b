using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>Where the plot, its axes and its legend lie, and how speed and opening turn into places.</summary>
internal sealed class MapFrame
{
    private MapFrame(SurveyGrid grid, Box plot, (double Width, double Height) whole)
    {
        (Plot, Width, Height) = (plot, whole.Width, whole.Height);
        Speed = Axis(ScaleKind.Linear, grid.SpeedsRpm, (plot.Left, plot.Right));
        Opening = Axis(ScaleKind.SquareRoot, grid.ThrottleDegrees, (plot.Bottom, plot.Top));
    }

    internal Box Plot { get; }

    internal double Width { get; }

    internal double Height { get; }

    internal Scale Speed { get; }

    internal Scale Opening { get; }

    internal static MapFrame For(SurveyGrid grid, PictureSize size) => size == PictureSize.Full
        ? new MapFrame(grid, new Box(50, 26, 714, 474), (772, 606))
        : new MapFrame(grid, new Box(40, 26, 320, 300), (366, 428));

    internal ChartPoint Place(MapSpot spot) => new(Speed.ToPlace(spot.SpeedRpm), Opening.ToPlace(spot.ThrottleDegrees));

    /// <summary>What a script needs to turn a tap into speed and opening.</summary>
    internal IReadOnlyList<(string Name, string Value)> Data()
    {
        static string Text(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
        return
        [
            ("plot-left", Text(Plot.Left)), ("plot-top", Text(Plot.Top)),
            ("plot-width", Text(Plot.Width)), ("plot-height", Text(Plot.Height)),
            ("x-scale", "linear"), ("x-from", Text(Speed.Values.From)), ("x-to", Text(Speed.Values.To)),
            ("y-scale", "sqrt"), ("y-from", Text(Opening.Values.From)), ("y-to", Text(Opening.Values.To)),
        ];
    }

    // A grid of one speed or one opening is still a picture: a strip round it
    private static Scale Axis(ScaleKind kind, IReadOnlyList<double> values, (double, double) places)
    {
        var (from, to) = (values[0], values[^1]);
        return to > from
            ? new Scale(kind, (from, to), places)
            : new Scale(kind, (Math.Max(0, from - 1), from + 1), places);
    }
}
