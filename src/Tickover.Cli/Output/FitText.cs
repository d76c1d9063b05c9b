using System.Globalization;
using System.Text;
using Tickover.Workshop.Calibration;

namespace Tickover.Cli.Output;

/// <summary>A fit as text.</summary>
/// <param name="width">Columns to fill at most.</param>
internal sealed class FitText(int width)
{
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    /// <summary>Writes it.</summary>
    /// <param name="fit">The fit.</param>
    /// <returns>The text.</returns>
    public string Text(CarFit fit)
    {
        var text = new StringBuilder();
        WrappedText.Append(text, width, string.Empty, string.Create(C, $"{fit.Runs[^1].Car.Name}, fitted to {fit.Points.Count} readings of {fit.Runs.Count} {(fit.Runs.Count == 1 ? "log" : "logs")}. Off by {Off(fit, p => p.ExpectedLambda)} before, {Off(fit, p => p.FittedLambda)} after; readings foretold from the others off by {100 * fit.LeftOutError:0.0} %, {100 * fit.LeftOutCoverage:0} % of them within their 90 % band."));
        text.AppendLine();
        text.Append(TextTable.Text(
            width,
            ["Unknown", "Value\t", "±\t", "Before any log\t", ""],
            fit.Unknowns.Select(u => (IReadOnlyList<string>)[u.Unknown.Label, Value(u), Width(u, u.Deviation), "± " + Width(u, u.Unknown.PriorDeviation), u.IsTold ? "" : "not told"])));
        foreach (var remark in fit.Remarks)
        {
            WrappedText.Append(text, width, string.Empty, remark);
        }

        return text.ToString();
    }

    private static string Off(CarFit fit, Func<FittedPoint, double> of) =>
        string.Create(C, $"{100 * Math.Sqrt(fit.Points.Average(p => Math.Pow(Math.Log(of(p) / p.Point.Lambda), 2))):0.0} %");

    private static string Value(FittedUnknown u) => u.Unknown.IsFactor ? string.Create(C, $"x {u.Unknown.Acting(u.Value):0.00}") : string.Create(C, $"{u.Value:+0.0;-0.0;0.0} {u.Unknown.Unit}");

    private static string Width(FittedUnknown u, double deviation) => u.Unknown.IsFactor ? string.Create(C, $"{100 * deviation:0} %") : string.Create(C, $"{deviation:0.0} {u.Unknown.Unit}");
}
