using System.Globalization;
using System.Text;
using Tickover.Physics;
using Tickover.Workshop.Gauges;

namespace Tickover.Cli.Output;

/// <summary>A gauge's story for a person: the account, the course in a few lines, the remedies.</summary>
/// <param name="width">Columns to fill.</param>
internal sealed class GaugeText(int width)
{
    private const double Litre = 1e-3;
    private const int Lines = 12;

    /// <summary>Writes it.</summary>
    /// <param name="a">The analysis.</param>
    /// <returns>The lines, each ended.</returns>
    public string Text(GaugeAnalysis a)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{a.Story.Name}: {a.Story.RoadName}, {a.Story.Road.DurationSeconds:0} s, tanks of {a.CapacityLitres:0.#} L together").AppendLine();
        WrappedText.Append(text, width, string.Empty, a.Advice[0].Heading);
        WrappedText.Append(text, width, "  ", a.Advice[0].Words);
        text.AppendLine();
        text.Append(TextTable.Text(width, ["Time\t", "Left\t", "Right\t", "There\t", "Needle\t", "Best estimate\t", "Lamp"], Rows(a)));
        text.AppendLine();
        text.Append(TextTable.Text(width, ["Remedy", "Usual error\t", "Worst\t", "False lamps\t", "To level\t"], a.Remedies.Select(Row)));
        foreach (var advice in a.Advice.Skip(1))
        {
            text.AppendLine().AppendLine(advice.Heading);
            WrappedText.Append(text, width, "  ", advice.Words);
        }

        if (a.Validity.Kind is not ValidityKind.Inside)
        {
            text.AppendLine().AppendLine("Beyond what the model is meant for: the fuel stands steeper than one in one.");
        }

        return text.ToString();
    }

    private static IEnumerable<string[]> Rows(GaugeAnalysis a) =>
        Enumerable.Range(0, Lines + 1).Select(i => i * (a.Course.Count - 1) / Lines).Distinct().Select(k =>
        {
            var (m, e) = (a.Course[k], a.Estimates[k]);
            return new[]
            {
                In($"{m.Seconds:0} s"), In($"{m.LeftCubicMetres / Litre:0.0} L"), In($"{m.RightCubicMetres / Litre:0.0} L"), In($"{m.TotalCubicMetres / Litre:0.0} L"),
                In($"{a.NeedleLitres[k]:0.0} L"), In($"{e.CubicMetres / Litre:0.0} ({e.LowCubicMetres / Litre:0.0} to {e.HighCubicMetres / Litre:0.0}) L"), m.Lamp ? "lit" : "",
            };
        });

    private static string[] Row(GaugeRemedy r) =>
    [
        r.Name, In($"{r.RmsLitres:0.0} L"), In($"{r.WorstLitres:0.0} L"), In($"{r.LampAlarms}"), r.MinutesToLevel is { } minutes ? In($"{minutes:0.0} min") : "over an hour",
    ];

    private static string In(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
