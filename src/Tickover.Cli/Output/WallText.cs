using System.Globalization;
using System.Text;
using Tickover.Workshop.Walls;

namespace Tickover.Cli.Output;

/// <summary>A survey's answer for a person: cautions, verdict, map, zones, years, metals.</summary>
/// <param name="width">Columns to fill.</param>
internal sealed class WallText(int width)
{
    private const string Indent = "  ";
    private static readonly double[] Years = [0, 1, 2, 5, 10, 20];

    /// <summary>Writes it.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The lines, each ended.</returns>
    public string Text(WallAnalysis analysis)
    {
        var text = new StringBuilder();
        var (survey, verdict) = (analysis.Survey, analysis.Verdict);
        text.AppendLine(survey.Name).AppendLine().AppendLine("Caution");
        foreach (var caution in WallCautions.All)
        {
            WrappedText.Append(text, width, Indent, caution);
        }

        text.AppendLine().AppendLine(verdict.Heading);
        WrappedText.Append(text, width, Indent, verdict.Why);
        if (verdict.ReadNext.Count > 0)
        {
            WrappedText.Append(text, width, Indent, $"Read next: {string.Join(", ", verdict.ReadNext)}.");
        }

        text.AppendLine().AppendLine(CultureInfo.InvariantCulture, $"Deepest pit of each cell, mm, of {survey.ThicknessMillimetres:0.##} mm of {MetalWords.Of(survey.Metal)}; * under a pad, . not read");
        text.Append(TextTable.Text(width, Columns(survey), Rows(survey)));
        Zones(text, analysis);
        Course(text, analysis);
        Metals(text, analysis);
        foreach (var doubt in analysis.Doubts)
        {
            text.AppendLine();
            WrappedText.Append(text, width, string.Empty, doubt);
        }

        text.AppendLine();
        WrappedText.Append(text, width, string.Empty, $"Limits: {WallLimits.Origin}");
        return text.ToString();
    }

    private static string[] Columns(WallSurvey survey) => ["", .. survey.Cells.Select(Letters).Distinct(StringComparer.Ordinal).OrderBy(l => (l.Length, l)).Select(l => l + "\t")];

    private static IEnumerable<string[]> Rows(WallSurvey survey)
    {
        var columns = Columns(survey);
        return survey.Cells.GroupBy(c => c.Name[Letters(c).Length..], StringComparer.Ordinal).Select(row => (string[])
        [
            row.Key,
            .. columns.Skip(1).Select(column => row.FirstOrDefault(c => string.Equals(Letters(c) + "\t", column, StringComparison.Ordinal)) is { } cell
                ? (cell.Reading.Kind is CellReadingKind.NotRead ? "." : WallFigures.Cell(cell.Reading)) + (cell.Zone is ZoneKind.Pad ? "*" : " ")
                : ""),
        ]);
    }

    private static string Letters(WallCell cell) => cell.Name.TrimEnd("0123456789".ToCharArray());

    private void Zones(StringBuilder text, WallAnalysis analysis)
    {
        var thickness = analysis.Survey.ThicknessMillimetres;
        text.AppendLine().AppendLine("Where nobody read (nine times in ten within the band)");
        text.Append(TextTable.Text(
            width,
            ["Part", "Area\t", "Read\t", "Deepest read", "Deepest not read", "Chance of a hole now"],
            analysis.Zones.Select(z => (string[])
            [
                ZoneWords.Name(z.Kind),
                string.Create(CultureInfo.InvariantCulture, $"{z.AreaSquareCentimetres:0} cm²"),
                z.Read.ToString(CultureInfo.InvariantCulture),
                z.Deepest is { } cell ? $"{WallFigures.Cell(cell.Reading)} in {cell.Name}" : "none",
                z.Unseen is { } unseen ? WallFigures.Depth(unseen, thickness) : z.Wanting > 0 ? $"{z.Wanting} more readings wanted" : "all was read",
                z.HoleNow is { } now ? WallFigures.Band(now) : "not known",
            ])));
        if (analysis.Loss is { } loss)
        {
            text.AppendLine(string.Create(
                CultureInfo.InvariantCulture,
                $"Even loss {loss.LossMetres:0.00} mm, {loss.RateMetresPerYear * 1000:0} µm a year{(loss.PittingFactor is { } factor ? $"; the deepest is {factor:0.0} times the mean" : string.Empty)}."));
        }
    }

    private void Course(StringBuilder text, WallAnalysis analysis)
    {
        if (analysis.Course.Count == 0)
        {
            return;
        }

        var (slow, fast) = analysis.Survey.Growth;
        text.AppendLine().AppendLine(CultureInfo.InvariantCulture, $"Chance of a hole anywhere, growth by powers from {slow:0.##} to {fast:0.##}");
        text.Append(TextTable.Text(width, ["Years from now\t", "Slow\t", "Between\t", "Fast\t"], Years.Select(y => (Year: y, Chance: analysis.At(y)!.Value)).Select(c => (string[])
        [
            c.Year.ToString(CultureInfo.InvariantCulture), WallFigures.Chance(c.Chance.Low), WallFigures.Chance(c.Chance.Middle), WallFigures.Chance(c.Chance.High),
        ])));
    }

    private void Metals(StringBuilder text, WallAnalysis analysis)
    {
        foreach (var couple in analysis.Couples)
        {
            text.AppendLine().Append("Metals in contact: ").AppendLine(couple.Contact.Where);
            WrappedText.Append(text, width, Indent, couple.Words);
        }
    }
}
