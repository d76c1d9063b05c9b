using System.Globalization;
using System.Text;
using Tickover.Workshop.Gauges;

namespace Tickover.Cli.Output;

/// <summary>A gauge's analysis for a person.</summary>
/// <param name="width">Columns to fill.</param>
internal sealed class GaugeText(int width)
{
    private const int Lines = 12;

    /// <summary>Writes it.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The lines, each ended.</returns>
    public string Text(GaugeAnalysis analysis)
    {
        var text = new StringBuilder();
        text.AppendLine(analysis.Setup.Name).AppendLine(analysis.Setup.Road.Name).AppendLine();
        WrappedText.Append(text, width, string.Empty, analysis.Headline);
        text.AppendLine().Append(TextTable.Text(width, ["Time\t", "In the tanks\t", "Left\t", "Right\t", "Needle says\t", "Best estimate\t", "Lamp"], Rows(analysis.Film)));
        foreach (var (question, answer) in analysis.Answers)
        {
            text.AppendLine().AppendLine(question);
            WrappedText.Append(text, width, "  ", answer);
        }

        text.AppendLine().AppendLine("What helps, on the same road");
        text.Append(TextTable.Text(width, ["Remedy", "Needle off, typical\t", "at worst\t", "False lamp\t", "Levels in\t"], analysis.Remedies.Select(Row)));
        text.AppendLine();
        WrappedText.Append(text, width, string.Empty, "The estimate knows how bends move fuel and needle; its band should hold the truth nine times of ten. Work on the sender with the battery isolated and the tank closed.");
        return text.ToString();
    }

    private static IEnumerable<string[]> Rows(GaugeFilm film)
    {
        var m = film.Moments;
        return Enumerable.Range(0, Lines + 1).Select(k => k * (m.Count - 1) / Lines).Distinct().Select(i => new[]
        {
            Figure($"{i * m.EverySeconds:0} s"),
            Figure($"{film.Truth[i]:0.0} L"),
            Figure($"{1000 * m.LeftVolumes[i]:0.0} L"),
            Figure($"{1000 * m.RightVolumes[i]:0.0} L"),
            Figure($"{film.Needle[i]:0.0} L"),
            Figure($"{film.Estimate[i]:0.0} ± {film.HalfBand[i]:0.0} L"),
            m.Lamps[i] ? "lit" : "",
        });
    }

    private static string[] Row(RemedyRow r) =>
        [r.Words, Figure($"{r.RmsLitres:0.0} L"), Figure($"{r.PeakLitres:0.0} L"), Figure($"{r.FalseLamps} ×"), r.LevelMinutes is { } m ? Figure($"{m:0.0} min") : "not in 2 h"];

    private static string Figure(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
