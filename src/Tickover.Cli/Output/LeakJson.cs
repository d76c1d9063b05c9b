using System.Globalization;
using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Workshop.Leaks;

namespace Tickover.Cli.Output;

/// <summary>A leak test's answer as JSON.</summary>
internal static class LeakJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The text.</returns>
    public static string Text(LeakAnalysis analysis) => JsonSerializer.Serialize(Of(analysis), CommandJson.Readable.LeakReport) + Environment.NewLine;

    private static LeakReport Of(LeakAnalysis a) => new()
    {
        Test = a.Sheet.Name,
        Kind = a.Verdict.Kind.ToString(),
        IsNo = a.Verdict.IsNo,
        Heading = a.Verdict.Heading,
        Why = a.Verdict.Why,
        Leak = Round(a.Rate.PascalCubicMetresPerSecond),
        Low = Round(a.Rate.Low),
        High = Round(a.Rate.High),
        WithoutTemperature = Round(a.Rate.WithoutTemperature),
        SmallestSeen = Round(a.Rate.SmallestSeen),
        MolesPerSecond = Round(a.Rate.MolesPerSecond),
        HoleMillimetres = a.HoleMetres is { } hole ? Round(hole * 1000) : null,
        SmallestHoleMillimetres = Round(a.SmallestHoleMetres * 1000),
        SecondsForLimit = a.SecondsForLimit is { } seconds ? Round(seconds) : null,
        UsedPascals = Round(a.Panel.UsedPascals),
        GentlePascals = Round(a.Panel.GentlePascals),
        BreathingPascals = a.Panel.BreathingPascals is { } breathing ? Round(breathing) : null,
        Curve = [.. a.Curve.Select(p => new LeakReportPoint(p.Minutes, Round(p.GaugePascals), Round(p.CorrectedPascals), Round(p.FittedPascals)))],
        Working = a.Working,
        Doubts = a.Doubts,
        Cautions = LeakCautions.All,
    };

    // Four digits that mean something, whatever the size.
    private static double Round(double value) => double.Parse(value.ToString("G4", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
