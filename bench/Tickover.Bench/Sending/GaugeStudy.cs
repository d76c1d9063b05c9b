using System.Globalization;
using Tickover.Physics.Sending;

namespace Tickover.Bench.Sending;

/// <summary>How near the estimate comes to the fuel really there on made-up drives, beside the needle alone; and how honest its band is.</summary>
/// <remarks>
/// The estimator is never told the truth's own figures: pipe, tank spacing, needle, burn, table and the accelerometer's zero, scale and mounting
/// are all off by amounts drawn anew for each drive. The raw needle is read through the same table of litres that the estimator has.
/// </remarks>
internal static class GaugeStudy
{
    private const double Seconds = 1800;
    private const double Settling = 60;

    internal static int Run(string[] words)
    {
        var drives = words.Length > 0 ? int.Parse(words[0], CultureInfo.InvariantCulture) : 200;
        var rows = Enumerable.Range(0, drives).Select(Drive).ToList();
        double Rms(Func<Row, double> square) => 1000 * Math.Sqrt(rows.Average(square));
        var (raw, guided, alone) = (Rms(r => r.Raw), Rms(r => r.Guided), Rms(r => r.Alone));
        Print($"{drives} drives of {Seconds / 60:F0} minutes, truth and estimator differing in pipe, spacing, needle, burn, table and accelerometer");
        Print($"needle through its table    rms {raw:F3} L");
        Print($"estimate, with accelerations rms {guided:F3} L, 1/{raw / guided:F1} of the needle's; truth in the 90 % band {100 * rows.Average(r => r.GuidedIn):F1} % of the time");
        Print($"estimate, needle alone      rms {alone:F3} L, 1/{raw / alone:F1} of the needle's; truth in the 90 % band {100 * rows.Average(r => r.AloneIn):F1} % of the time");
        Print($"half band at the end of a drive, median: {1000 * Median(rows.Select(r => r.Band)):F2} L; drives with an invented refill: {rows.Count(r => r.Refills > 0)}");
        var worst = rows.Select(r => Math.Sqrt(r.Guided / r.Raw)).Order().ToArray();
        Print($"estimate's rms as a part of the needle's, drive by drive: median {Median(worst):F3}, nine of ten under {worst[(int)(0.9 * (worst.Length - 1))]:F3}, worst {worst[^1]:F3}");
        return 0;
    }

    private static Row Drive(int seed)
    {
        var random = new Random(1000 + seed);
        double Off(double part) => 1 + part * SyntheticDrive.Normal(random);
        var believed = GaugeCar.Pair;
        var fitting = believed.Fitting!;
        var half = 0.45 * Off(0.02);
        var truth = believed with
        {
            Left = believed.Left with { LeftMetres = half },
            Right = believed.Right with { LeftMetres = -half },
            Pipe = believed.Pipe with { BoreMetres = 0.012 * Off(0.02), LossToLeft = 2.5 * Off(0.15), LossToRight = 2.5 * Off(0.15) },
            Draw = believed.Draw with { BurntCubicMetresPerSecond = 3e-6 * Math.Max(0.3, Off(0.3)) },
            Fitting = fitting with { Gauge = fitting.Gauge with { TimeConstantSeconds = 12 * Off(0.1), AddedOhms = Math.Abs(0.5 * SyntheticDrive.Normal(random)) } },
        };
        var road = SyntheticDrive.Make(random, Seconds);
        var start = 0.008 + 0.010 * random.NextDouble();
        var m = truth.Run(road, (start + 0.0005 * SyntheticDrive.Normal(random), start), GaugeCar.Every);
        var (zeroX, zeroY, scale) = (0.05 * SyntheticDrive.Normal(random), 0.05 * SyntheticDrive.Normal(random), Off(0.02));
        var turned = 0.02 * SyntheticDrive.Normal(random);
        var ax = m.Ahead.Select((a, i) => scale * (a + turned * m.Left[i]) + zeroX + 0.2 * SyntheticDrive.Normal(random)).ToArray();
        var ay = m.Left.Select((a, i) => scale * (a - turned * m.Ahead[i]) + zeroY + 0.2 * SyntheticDrive.Normal(random)).ToArray();
        var needles = m.Needles.Select(n => Math.Round(n * 100) / 100).ToArray();
        var guided = new FuelEstimator(believed, new FuelEstimateSettings()).Run(m.EverySeconds, needles, ax, ay);
        var alone = new FuelEstimator(believed, FuelEstimateSettings.NeedleAlone).Run(m.EverySeconds, needles, [], []);
        var table = new SettledGauge(believed);
        var from = (int)(Settling / m.EverySeconds);
        var every = Enumerable.Range(from, m.Count - from).ToArray();
        double Mean(Func<int, double> of) => every.Average(of);
        return new Row(
            Mean(i => Math.Pow(table.Volume(needles[i]) - m.Total(i), 2)),
            Mean(i => Math.Pow(guided.Volumes[i] - m.Total(i), 2)),
            Mean(i => Math.Pow(alone.Volumes[i] - m.Total(i), 2)),
            Mean(i => Math.Abs(guided.Volumes[i] - m.Total(i)) <= guided.HalfBands[i] ? 1 : 0),
            Mean(i => Math.Abs(alone.Volumes[i] - m.Total(i)) <= alone.HalfBands[i] ? 1 : 0),
            guided.HalfBands[^1],
            guided.Refills.Count);
    }

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToArray();
        return sorted[sorted.Length / 2];
    }

    private static void Print(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    private sealed record Row(double Raw, double Guided, double Alone, double GuidedIn, double AloneIn, double Band, int Refills);
}
