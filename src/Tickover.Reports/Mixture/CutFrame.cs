using System.Globalization;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>Where a cut's plot lies, and its two axes.</summary>
internal sealed class CutFrame
{
    private CutFrame(CrossSectionView view, (double Low, double High) range, Box plot, (double Width, double Height) whole)
    {
        (Plot, Width, Height) = (plot, whole.Width, whole.Height);
        var map = MapFrame.For(view.Fitted.Grid, PictureSize.Full);
        var axis = view.Axis == CrossSectionAxis.Speed ? map.Speed : map.Opening;
        Along = new Scale(axis.Kind, axis.Values, (plot.Left, plot.Right));
        Lambda = new Scale(ScaleKind.Linear, (range.Low, range.High), (plot.Bottom, plot.Top));
    }

    internal Box Plot { get; }

    internal double Width { get; }

    internal double Height { get; }

    internal Scale Along { get; }

    internal Scale Lambda { get; }

    internal static CutFrame For(CrossSectionView view, (double Low, double High) range) => view.Size == PictureSize.Full
        ? new CutFrame(view, range, new Box(50, 34, 704, 212), (772, 300))
        : new CutFrame(view, range, new Box(44, 34, 304, 176), (366, 264));

    internal IReadOnlyList<(string Name, string Value)> Data()
    {
        static string Text(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
        return
        [
            ("plot-left", Text(Plot.Left)), ("plot-top", Text(Plot.Top)),
            ("plot-width", Text(Plot.Width)), ("plot-height", Text(Plot.Height)),
            ("x-scale", Along.Kind == ScaleKind.Linear ? "linear" : "sqrt"),
            ("x-from", Text(Along.Values.From)), ("x-to", Text(Along.Values.To)),
        ];
    }
}
