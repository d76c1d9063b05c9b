using System.Globalization;
using Tickover.Workshop.Walls;

namespace Tickover.Workshop.Leaks;

/// <summary>What a leak test says besides its verdict, in sentences.</summary>
public static class LeakWords
{
    /// <summary>How small a leak would have shown.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>A sentence.</returns>
    public static string Smallest(LeakAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return $"The smallest leak this test could be trusted to see is {LeakFigures.Leak(analysis.Rate.SmallestSeen)}, as much as one clean round hole of {LeakFigures.Hole(analysis.SmallestHoleMetres)}."
            + (analysis.HoleMetres is { } hole ? $" What leaked is as much as one of {LeakFigures.Hole(hole)}." : string.Empty);
    }

    /// <summary>What the walls bear.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>Sentences.</returns>
    public static string Walls(LeakAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        var (panel, unit) = (analysis.Panel, analysis.Sheet.Unit);
        if (analysis.Sheet.Panel is not { } described)
        {
            return $"The largest flat panel was not measured. Stay under {LeakFigures.Pressure(PanelFinding.UsualPascals, unit)} (ISO 21487 checks with 1.9 to 2.1 kPa of air), and under less where the wall is thin.";
        }

        var breathing = panel.BreathingPascals is { } breathes && breathes < panel.GentlePascals ? $" From {LeakFigures.Pressure(breathes, unit)} on it bulges by more than half its thickness and can be seen to breathe." : string.Empty;
        var times = panel.TypeTestTimes is > 1 and { } n
            ? string.Create(CultureInfo.InvariantCulture, $" A type test for new tanks, at 0.3 bar, asks {n:0.#} times as much: it would wreck this tank.")
            : " A type test for new tanks, at 0.3 bar, is not for an old tank all the same: seams bear less than sheet.";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"A flat panel of {described.ShortMillimetres:0} by {described.LongMillimetres:0} mm in {described.ThicknessMillimetres:0.##} mm of {MetalWords.Of(described.Metal)} {(panel.GentlePascals < PanelFinding.MostPascals ? "should bear" : "would bear more, but old seams are held to")} {LeakFigures.Pressure(panel.GentlePascals, unit)} at most; the test used {LeakFigures.Pressure(panel.UsedPascals, unit)}.{breathing}{times}");
    }
}
