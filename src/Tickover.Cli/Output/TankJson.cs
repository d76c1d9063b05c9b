using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Physics.Gauges;
using Tickover.Workshop.Tanks;

namespace Tickover.Cli.Output;

/// <summary>Tanks and senders as JSON.</summary>
internal static class TankJson
{
    /// <summary>Writes the tanks' document.</summary>
    /// <param name="a">The analysis.</param>
    /// <returns>The text.</returns>
    public static string Tank(TankAnalysis a) => JsonSerializer.Serialize(
        new TankReport
        {
            Name = a.Set.Name,
            CapacityLitres = Round(a.Set.CapacityLitres),
            Tanks = [.. a.Set.Tanks.Select(t => new TankReportTank(t.Name, Round(t.CapacityLitres), Round(t.Shape.WallSquareMetres)))],
            Table = [.. a.Table.Select(l => new TankReportLine(Round(l.Litres), [.. l.Tanks.Select(t => Round(t.Litres))], [.. l.Tanks.Select(t => Round(t.DipMillimetres))], Round(l.Ohms), Round(l.Needle)))],
            NeedleRead = a.IsNeedleRead,
            UnusableLitres = Round(a.UnusableLitres),
            Stances = [.. a.Stances.Select(s => new TankReportStance(s.Stance.Name, Round(s.UnusableLitres), Round(s.NeedleThen)))],
            Fill = a.Fill is { } f
                ? new TankReportFill(f.Verdict.ToString(), Round(f.Misfit), [.. f.Lines.Select(l => new TankReportStep(
                    Round(1000 * l.Read.PouredCubicMetres), Round(1000 * l.Read.DipMetres), Round(1000 * l.DrawnDipMetres), Round(1000 * l.FittedDipMetres), Round(1000 * l.FittedCubicMetres), Round(1000 * l.BandCubicMetres), l.StandsOut))])
                : null,
            Advice = Advice(a.TankAdvice),
        },
        CommandJson.Readable.TankReport) + Environment.NewLine;

    /// <summary>Writes the sender's document.</summary>
    /// <param name="a">The analysis, with readings.</param>
    /// <returns>The text.</returns>
    public static string Sender(TankAnalysis a)
    {
        var verdict = a.Sender!;
        return JsonSerializer.Serialize(
            new SenderReport
            {
                Name = a.Set.Name,
                Misfit = Round(verdict.Diagnosis.Misfit),
                Faults = [.. verdict.Diagnosis.Faults.Select(f => new SenderReportFault(f.Fault.ToString(), Round(f.Probability), f.Best.Sender.Key, f.Best.Gauge.Key))],
                Senders = [.. verdict.Diagnosis.Senders.Select(f => new SenderReportFamily(f.Family.Key, Round(f.Probability)))],
                Gauges = [.. verdict.Diagnosis.Gauges.Select(f => new SenderReportFamily(f.Family.Key, Round(f.Probability)))],
                Cures = [.. verdict.Cures.Select(c => Cure(c, ReferenceEquals(c, verdict.Advised)))],
                Advice = Advice(a.SenderAdvice),
            },
            CommandJson.Readable.SenderReport) + Environment.NewLine;
    }

    private static SenderReportCure Cure(GaugeCure c, bool advised) => new()
    {
        Kind = c.Kind.ToString(),
        What = GaugeCureWords.What(c),
        Advised = advised,
        SeriesOhms = Round(c.SeriesOhms),
        ParallelOhms = Round(c.ParallelOhms),
        BendDegrees = Round(double.RadiansToDegrees(c.BendRadians)),
        AveragePart = Round(c.RootMeanSquare),
        WorstPart = Round(Math.Abs(c.Worst.Error)),
        Scale = [.. c.Scale.Select(p => new SenderReportPoint(Round(1000 * p.VolumeCubicMetres), Round(p.Needle), Round(p.Wanted)))],
    };

    private static TankReportAdvice[] Advice(IReadOnlyList<TankAdvice> advice) => [.. advice.Select(l => new TankReportAdvice(l.Heading, l.Words, l.IsDanger))];

    private static double Round(double value) => Math.Round(value, 3);

    private static double? Round(double? value) => value is { } v ? Math.Round(v, 3) : null;
}
