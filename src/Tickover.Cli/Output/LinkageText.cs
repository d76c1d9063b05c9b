using System.Globalization;
using System.Text;
using Tickover.Reports;
using Tickover.Workshop.Linkages;

namespace Tickover.Cli.Output;

/// <summary>A linkage's analysis for a person: what it does over the travel, what to set, what else it says.</summary>
/// <param name="width">Columns to fill.</param>
internal sealed class LinkageText(int width)
{
    // Every tenth of the travel; the course is finer.
    private const int EachOf = 4;

    /// <summary>Writes it.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The lines, each ended.</returns>
    public string Text(LinkageAnalysis analysis)
    {
        var text = new StringBuilder();
        text.AppendLine(analysis.Linkage.Name).AppendLine();
        text.AppendLine("Angle of the plates from square to the bore, and air against the mean by the plates' gaps");
        text.Append(TextTable.Text(width, ["Pedal\t", .. analysis.Names.Select(n => n + "\t"), "Limit\t"], analysis.Course.Where((_, i) => i % EachOf == 0).Select(Row)));
        if (analysis.Equalised.Moves.Count > 0)
        {
            text.AppendLine().AppendLine("Set, in this order");
            foreach (var move in analysis.Equalised.Moves)
            {
                WrappedText.Append(text, width, "  ", $"{LinkageMoveWords.Act(move)}: {LinkageMoveWords.Figures(move)}.");
            }
        }

        foreach (var advice in analysis.Advice)
        {
            text.AppendLine().AppendLine(advice.IsDanger ? $"Danger: {advice.Heading}" : advice.Heading);
            WrappedText.Append(text, width, "  ", advice.Words);
        }

        text.AppendLine();
        WrappedText.Append(text, width, string.Empty, LinkageLimits.Origin);
        return text.ToString();
    }

    private static string[] Row(LinkageMoment moment) =>
    [
        Shown.Percent(moment.Down),
        .. moment.Plates.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Degrees:0.0}°  {Signed(p.DeviationPart),5}")),
        $"±{Shown.Percent(moment.LimitPart)}",
    ];

    private static string Signed(double part)
    {
        var text = Shown.Percent(part);
        return part >= 0.005 ? "+" + text : text;
    }
}
