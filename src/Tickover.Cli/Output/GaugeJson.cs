using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Physics;
using Tickover.Workshop.Gauges;

namespace Tickover.Cli.Output;

/// <summary>A gauge's story as JSON.</summary>
internal static class GaugeJson
{
    private const double Litre = 1e-3;

    /// <summary>Writes the document.</summary>
    /// <param name="a">The analysis.</param>
    /// <returns>The text.</returns>
    public static string Text(GaugeAnalysis a) => JsonSerializer.Serialize(Of(a), CommandJson.Readable.GaugeReport) + Environment.NewLine;

    private static GaugeReport Of(GaugeAnalysis a) => new()
    {
        Gauge = a.Story.Name,
        Road = a.Story.RoadName,
        CapacityLitres = Round(a.CapacityLitres),
        Course = [.. Enumerable.Range(0, a.Course.Count).Select(k => Moment(a, k))],
        Remedies = [.. a.Remedies.Select(r => new GaugeReportRemedy(r.Key, r.Name, Round(r.RmsLitres), Round(r.WorstLitres), r.LampAlarms, r.MinutesToLevel is { } m ? Round(m) : null, Round(r.DrySeconds)))],
        Advice = [.. a.Advice.Select(w => new GaugeReportAdvice(w.Heading, w.Words))],
        Inside = a.Validity.Kind is ValidityKind.Inside,
    };

    private static GaugeReportMoment Moment(GaugeAnalysis a, int k)
    {
        var (m, e) = (a.Course[k], a.Estimates[k]);
        return new GaugeReportMoment(
            Round(m.Seconds), Round(m.LeftCubicMetres / Litre), Round(m.RightCubicMetres / Litre), Round(m.FlowToRight / Litre * 60), Round(m.Ohms), Round(m.Needle),
            Round(a.NeedleLitres[k]), Round(e.CubicMetres / Litre), Round(e.LowCubicMetres / Litre), Round(e.HighCubicMetres / Litre), m.Lamp, m.PickUpCovered);
    }

    private static double Round(double value) => Math.Round(value, 3);
}
