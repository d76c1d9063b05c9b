using System.Globalization;

namespace Tickover.Workshop.Logs;

/// <summary>What speaks against a log as a whole. The limits are common practice (trade reference 1.20, 3.2, 6).</summary>
internal static class LogDoubts
{
    private const double BanksApart = 0.04;              // of λ, everywhere
    private const double LeakLambda = 1.03;
    private const double LeakOver = 0.10;                // of λ that idle reads leaner than everything above it
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    internal static IEnumerable<string> Of(LogView view, LogDelay delay, List<MixturePoint> points) =>
        Warmth(view).Concat(Probe(view)).Concat(Leak(points)).Concat(Banks(points)).Concat(Rest(view, delay, points)).OfType<string>();

    private static IEnumerable<string?> Warmth(LogView view)
    {
        if (view.Grid.Coolant is null && view.Grid.Oil is null)
        {
            yield return "No coolant or oil temperature in the log: it is taken that the engine was warm. Log one of them, or note it.";
        }

        yield return Unfit(view);
    }

    // Why nothing in the log can be used at all.
    private static string? Unfit(LogView view)
    {
        var running = Enumerable.Range(0, view.Grid.Count).Where(view.Runs).ToArray();
        if (running.Length == 0)
        {
            return "The engine does not run anywhere in this log.";
        }

        if (!Array.TrueForAll(running, view.IsCold) || (view.Grid.Coolant ?? view.Grid.Oil) is not { } channel)
        {
            return null;
        }

        var most = running.Select(i => channel[i]).Where(double.IsFinite).DefaultIfEmpty(double.NaN).Max() - 273.15;
        return string.Create(C, $"The engine never got warm (at most {most:0} °C): nothing in this log says anything of the jets of a warm engine. Warm it through and log again.");
    }

    private static IEnumerable<string?> Probe(LogView view)
    {
        if (view.Log.Lambdas.Count == 1 && view.Car.Barrels.Count > 1)
        {
            yield return view.Log.Lambdas[0].Bank is { } bank && view.Car.Banks.Max() > 1
                ? string.Create(C, $"Only bank {bank} was measured: the other is taken to be like it, which a second probe would show.")
                : "One probe saw all barrels: a rich one and a lean one average out, and a dead one reads lean. Compare plugs or pipe temperatures before trusting a jet to it.";
        }
    }

    private static IEnumerable<string?> Leak(List<MixturePoint> points)
    {
        foreach (var bank in points.GroupBy(p => p.Bank))
        {
            var idle = Median(bank.Where(p => p.Regime is Regime.Idle));
            var above = Median(bank.Where(p => p.Regime is Regime.Cruise or Regime.Changeover or Regime.FullLoad));
            if (idle > LeakLambda && idle - above > LeakOver)
            {
                yield return string.Create(C, $"Idle reads λ {idle:0.00}, everything above {above:0.00}{(bank.Key is { } b ? $" (bank {b})" : string.Empty)}: with little flow a leak before the probe or a misfire reads lean. Look for both before the idle jet.");
            }
        }
    }

    private static IEnumerable<string?> Banks(List<MixturePoint> points)
    {
        var (one, two) = (points.Where(p => p.Bank is 1 && p.Regime is not Regime.Overrun), points.Where(p => p.Bank is 2 && p.Regime is not Regime.Overrun).ToDictionary(p => p.StartSeconds));
        var apart = one.Where(p => two.ContainsKey(p.StartSeconds)).Select(p => p.Lambda - two[p.StartSeconds].Lambda).Order().ToArray();
        if (apart.Length >= 5 && (apart[apart.Length / 5] > BanksApart || apart[^(1 + apart.Length / 5)] < -BanksApart))
        {
            yield return string.Create(C, $"Bank 1 reads {apart[apart.Length / 2]:+0.00;-0.00} against bank 2 nearly everywhere: swap the sensors side to side before any jet.");
        }
    }

    private static IEnumerable<string?> Rest(LogView view, LogDelay delay, List<MixturePoint> points)
    {
        yield return view.Marks.Doubt;
        if (!delay.Found && view.Settings.Delay is null)
        {
            yield return "The transport delay could not be found in the log; the usual one is taken. Two or three snaps of the throttle while logging would settle it.";
        }

    }

    /// <summary>Why there is not one point, and what would do; null where there are points.</summary>
    internal static string? WhyNone(LogView view, List<MixturePoint> points, IReadOnlyDictionary<string, double> leftOut)
    {
        if (points.Count > 0)
        {
            return null;
        }

        if (Unfit(view) is { } unfit)
        {
            return unfit;
        }

        return leftOut.Keys.Any(k => k.StartsWith("steady", StringComparison.Ordinal))
            ? "There were steady stretches, but the λ sensor gave no figure in any of them or stood at its end: see that it is warm, plugged in and meant for this range, and log again."
            : "Nothing in the log was steady long enough for a point: hold each speed and throttle for five seconds or longer.";
    }

    private static double Median(IEnumerable<MixturePoint> points)
    {
        var sorted = points.Select(p => p.Lambda).Order().ToArray();
        return sorted.Length == 0 ? double.NaN : sorted[sorted.Length / 2];
    }
}
