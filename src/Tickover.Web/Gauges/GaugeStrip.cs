using System.Globalization;
using System.Text;
using Tickover.Physics.Sending;
using Tickover.Reports.Roads;
using Tickover.Workshop.Gauges;

namespace Tickover.Web.Gauges;

/// <summary>The course as lines of a strip: litres over time.</summary>
/// <param name="analysis">What was worked out.</param>
/// <param name="width">Width of the strip, px.</param>
/// <param name="times">How many marks of time there may be.</param>
public sealed class GaugeStrip(GaugeAnalysis analysis, double width, int times)
{
    private const double Height = 140;
    private const double Litre = 1e-3;
    private const double LongestInSeconds = 600;
    private const double EdgeWidth = 24;

    private static readonly string[] Quarters = ["¼", "½", "¾"];

    /// <summary>Width, px.</summary>
    public double Width => width;

    private IReadOnlyList<SendingMoment> Course => analysis.Course;

    private double Duration => Math.Max(1, Course[^1].Seconds);

    /// <summary>Path of the fuel there.</summary>
    public string TruthLine() => Line(k => Course[k].TotalCubicMetres / Litre);

    /// <summary>Path of what the needle says.</summary>
    public string NeedleLine() => Line(k => analysis.NeedleLitres[k]);

    /// <summary>Path of the best estimate.</summary>
    public string EstimateLine() => Line(k => analysis.Estimates[k].CubicMetres / Litre);

    /// <summary>Path round the estimate's band.</summary>
    public string Band()
    {
        var there = Points(Enumerable.Range(0, Course.Count), k => analysis.Estimates[k].HighCubicMetres / Litre);
        var back = Points(Enumerable.Range(0, Course.Count).Reverse(), k => analysis.Estimates[k].LowCubicMetres / Litre);
        return $"M{there}L{back}Z";
    }

    /// <summary>Places and words of the marks of time under the strip.</summary>
    public IEnumerable<(string X, string Anchor, string Text)> Times() =>
        from seconds in TraceTime.Ticks(Duration, times)
        let x = width * seconds / Duration
        select (Number(x), x < EdgeWidth ? "start" : x > width - EdgeWidth ? "end" : "middle",
            Duration < LongestInSeconds ? string.Create(CultureInfo.InvariantCulture, $"{seconds:0} s") : TraceTime.Words(seconds));

    /// <summary>Height and words of a quarter, half and three quarters of the capacity.</summary>
    public IEnumerable<(string Y, string Text)> Marks() =>
        Quarters.Select((part, i) => (Number(Y(analysis.CapacityLitres * (i + 1) / 4)), string.Create(CultureInfo.InvariantCulture, $"{part}: {analysis.CapacityLitres * (i + 1) / 4:0} L")));

    /// <summary>A number as it stands in a picture.</summary>
    /// <param name="value">The number.</param>
    public static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private string Line(Func<int, double> litres) => "M" + Points(Enumerable.Range(0, Course.Count), litres);

    private string Points(IEnumerable<int> moments, Func<int, double> litres)
    {
        var path = new StringBuilder();
        foreach (var k in moments)
        {
            path.Append(path.Length == 0 ? "" : "L").Append(Number(width * Course[k].Seconds / Duration)).Append(' ').Append(Number(Y(litres(k))));
        }

        return path.ToString();
    }

    private double Y(double litres) => Height * (1 - Math.Clamp(litres / analysis.CapacityLitres, 0, 1));
}
