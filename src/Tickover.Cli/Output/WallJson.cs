using System.Globalization;
using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Physics.Walls;
using Tickover.Workshop.Walls;

namespace Tickover.Cli.Output;

/// <summary>A survey's answer as JSON.</summary>
internal static class WallJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The text.</returns>
    public static string Text(WallAnalysis analysis) => JsonSerializer.Serialize(Of(analysis), CommandJson.Readable.WallReport) + Environment.NewLine;

    private static WallReport Of(WallAnalysis a) => new()
    {
        Wall = a.Survey.Name,
        Metal = MetalWords.Of(a.Survey.Metal),
        ThicknessMillimetres = a.Survey.ThicknessMillimetres,
        Verdict = new WallReportVerdict(
            a.Verdict.Kind.ToString(), a.Verdict.IsNo, a.Verdict.Heading, a.Verdict.Why, a.Verdict.PatchRefused, Round(a.Verdict.AgainInYears),
            a.Verdict.AgainOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), a.Verdict.ReadNext),
        Zones = [.. a.Zones.Select(Zone)],
        Cells = [.. a.Survey.Read.Select(c => new WallReportCell(c.Name, c.Zone.ToString(), c.Reading.Kind.ToString(), Round(c.Reading.DepthMillimetres)))],
        Course = [.. a.Course.Select(y => new WallReportYear(y.Years, Round(y.Chance.Low), Round(y.Chance.Middle), Round(y.Chance.High)))],
        MeanLossMillimetres = Round(a.Loss?.LossMetres),
        Couples = [.. a.Couples.Select(Couple)],
        Doubts = a.Doubts,
        Cautions = WallCautions.All,
    };

    private static WallReportZone Zone(ZoneFinding z) => new()
    {
        Kind = z.Kind.ToString(),
        AreaSquareCentimetres = Round(z.AreaSquareCentimetres),
        Read = z.Read,
        PatchesNotRead = Round(z.PatchesNotRead),
        DeepestCell = z.Deepest?.Name,
        DeepestReadMillimetres = Round(z.Deepest?.Reading.DepthMillimetres),
        UnseenMillimetres = z.Unseen is { } u ? [Round(u.Low), Round(u.Middle), Round(u.High)] : null,
        HoleNow = z.HoleNow is { } c ? Three(c) : null,
        Validity = z.Validity.Kind.ToString(),
        Wanting = z.Wanting,
    };

    private static double[] Three(ChanceBand band) => [Round(band.Low), Round(band.Middle), Round(band.High)];

    private static WallReportCouple Couple(CoupleFinding c) => new(
        c.Contact.Where,
        MetalWords.Of(c.Contact.Metal),
        Round(c.Couple.DifferenceVolts),
        c.Couple.LimitVolts,
        c.Couple.IsCompatible,
        Round(c.AreaEffect),
        c.MillimetresPerYear is { } rate ? [Round(rate.Low), Round(rate.High)] : null,
        c.Words);

    private static double Round(double value) => Math.Round(value, 4);

    private static double? Round(double? value) => value is { } known ? Math.Round(known, 4) : null;
}
