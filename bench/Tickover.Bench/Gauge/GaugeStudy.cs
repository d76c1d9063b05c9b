using System.Globalization;

namespace Tickover.Bench.Gauge;

/// <summary>How well the fuel is known from a swinging needle, over invented drives of cars that are not quite what the estimator is told.</summary>
internal static class GaugeStudy
{
    private const int Drives = 200;
    private const double Asked = 0.1;

    internal static int Run(int drives = Drives, int seed = 1)
    {
        var results = new DriveResult[drives];
        Parallel.For(0, drives, new ParallelOptions { MaxDegreeOfParallelism = 2 }, k => results[k] = StudyDrive.Run(seed * 10_000 + k));
        Print($"{drives} drives of 15 to 60 minutes, seed {seed}; {results.Count(r => r.Filled)} with a fill on the way; needle read twice a second.");
        Line("all drives", results);
        Line("with a fill", [.. results.Where(r => r.Filled)]);
        Line("without", [.. results.Where(r => !r.Filled)]);
        var ratio = Rms(results, r => r.Estimate) / Rms(results, r => r.Raw);
        var share = results.Sum(r => r.Inside) / results.Sum(r => (double)r.Readings);
        Print($"Goal {Asked} of the raw needle's error: {(ratio <= Asked ? "reached" : "NOT reached")} ({ratio:F3}); truth in the 90 % band {100 * share:F1} % of the time.");
        return 0;
    }

    private static void Line(string what, DriveResult[] r)
    {
        if (r.Length == 0)
        {
            return;
        }

        var ratios = r.Select(d => d.Estimate / d.Raw).Order().ToArray();
        Print($"{what,-12} rms of the needle {Rms(r, d => d.Raw):F2} L (calm readings only {Rms(r, d => d.Calm):F2}, 60 s mean {Rms(r, d => d.Mean):F2}), of the estimate {Rms(r, d => d.Estimate):F3} L, ratio {Rms(r, d => d.Estimate) / Rms(r, d => d.Raw):F3}, of single drives median {ratios[ratios.Length / 2]:F3}, nine in ten under {ratios[ratios.Length * 9 / 10]:F3}; in the band {100 * r.Sum(d => d.Inside) / r.Sum(d => (double)d.Readings):F1} %, its mean half-width {r.Average(d => d.HalfWidth):F2} L");
    }

    private static double Rms(DriveResult[] r, Func<DriveResult, double> value) => Math.Sqrt(r.Average(d => value(d) * value(d)));

    private static void Print(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
