using System.Globalization;
using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls;

/// <summary>The working of one cell, line by line.</summary>
public static class CellWorking
{
    /// <summary>What a cell says and how it is worked out.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <param name="cell">The cell.</param>
    /// <returns>Sentences in order.</returns>
    public static IReadOnlyList<string> Of(WallAnalysis analysis, WallCell cell)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentNullException.ThrowIfNull(cell);
        var survey = analysis.Survey;
        return [Reading(survey, cell), .. Growth(survey, cell), .. Zone(analysis, cell)];
    }

    private static string Reading(WallSurvey survey, WallCell cell)
    {
        var depth = cell.Reading.DepthMillimetres;
        var source = survey.ReadsWallLeft
            ? $"{Figure(survey.ThicknessMillimetres)} of sheet less {Figure(survey.ThicknessMillimetres - depth)} left is {Figure(depth)} gone"
            : $"deepest pit {Figure(depth)}";
        return cell.Reading.Kind switch
        {
            CellReadingKind.NotRead => "Not read.",
            CellReadingKind.Hole => "Through.",
            CellReadingKind.Shallower => $"Under {Figure(depth)}: too shallow to measure. It counts as a cell with a shallow pit, not as one not read.",
            CellReadingKind.Deeper => $"Over {Figure(depth)}: deeper than could be measured.",
            _ => $"Measured: {source}, ±{Figure(survey.GaugeErrorMillimetres)} by the gauge; {WallFigures.Percent(Math.Max(0, 1 - depth / survey.ThicknessMillimetres))} of the wall left.",
        };
    }

    private static IEnumerable<string> Growth(WallSurvey survey, WallCell cell)
    {
        if (cell.Reading.Kind is not CellReadingKind.Depth || cell.Reading.DepthMillimetres <= 0)
        {
            yield break;
        }

        var slow = GrowthRange.AgeWhenThrough(survey.ThicknessMillimetres, cell.Reading.DepthMillimetres, survey.Growth.Slow, survey.AgeYears.Oldest) - survey.AgeYears.Oldest;
        var fast = GrowthRange.AgeWhenThrough(survey.ThicknessMillimetres, cell.Reading.DepthMillimetres, survey.Growth.Fast, survey.AgeYears.Youngest) - survey.AgeYears.Youngest;
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"Through when (1 + y/A)^n reaches {survey.ThicknessMillimetres / cell.Reading.DepthMillimetres:0.00}: in {Long(fast)} with n {survey.Growth.Fast:0.##} and {survey.AgeYears.Youngest:0.#} years of age, in {Long(slow)} with n {survey.Growth.Slow:0.##} and {survey.AgeYears.Oldest:0.#} years. Walls, equations 19 and 21.");
    }

    private static IEnumerable<string> Zone(WallAnalysis analysis, WallCell cell)
    {
        var zone = analysis.Zones.First(z => z.Kind == cell.Zone);
        yield return string.Create(CultureInfo.InvariantCulture, $"It lies {ZoneWords.Where(cell.Zone)}: {zone.AreaSquareCentimetres:0} cm², {zone.Read} cells read, {zone.PatchesNotRead:0.#} times the area of one not read.");
        if (zone is { Likeliest: { } pair, Unseen: { } unseen })
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"Likeliest λ {pair.Location:0.00} and α {pair.Scale:0.000} mm; over all pairs the readings allow, the deepest pit not read is {WallFigures.Depth(unseen, analysis.Survey.ThicknessMillimetres)}, nine times in ten. Walls, equations 15 to 18.");
        }
    }

    private static string Long(double years) => years > 99 ? "more than a hundred years" : WallFigures.Years(years);

    private static string Figure(double millimetres) => WallFigures.Millimetres(millimetres);
}
