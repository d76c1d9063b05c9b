using System.Globalization;
using Tickover.Workshop.Walls;

namespace Tickover.Reports.Walls;

/// <summary>The sentences that stand for the pictures of a wall.</summary>
internal static class WallSentence
{
    internal static string Of(WallAnalysis analysis)
    {
        var survey = analysis.Survey;
        var deepest = survey.Deepest is { } cell ? $"the deepest pit read is {WallFigures.Cell(cell.Reading)} mm in {cell.Name}" : "no pit was measured";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{survey.Name}: {survey.Read.Count()} of {survey.Cells.Count} cells read, {deepest}, {ZoneWords.Where(survey.Deepest?.Zone ?? ZoneKind.Open)}, of {survey.ThicknessMillimetres:0.##} mm. {analysis.Verdict.Heading}.");
    }

    internal static string OfYears(WallAnalysis analysis)
    {
        var (now, end) = (analysis.Course[0].Chance, analysis.Course[^1].Chance);
        return $"Chance of a hole anywhere: now {WallFigures.Band(now)}, in {WallAnalyst.Horizon.ToString(CultureInfo.InvariantCulture)} years {WallFigures.Band(end)}.";
    }
}
