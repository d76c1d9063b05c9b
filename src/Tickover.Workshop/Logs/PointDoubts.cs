namespace Tickover.Workshop.Logs;

/// <summary>Why a point should not decide alone. The limits are common practice (trade reference 3.2, 3.3, 6).</summary>
internal static class PointDoubts
{
    private const double MisfireLambda = 1.12;           // of idle: leaner than an engine idles on
    private const double MisfireScatter = 0.05;
    private const double DriftPerSecond = 0.02;
    private const double ScatterSteady = 0.06;
    private const double Between = 0.5;                  // s between points of one pull
    private const double Again = 0.08;                   // of λ between two points of one pull

    internal static IReadOnlyList<string> Of(Regime regime, LambdaMean mean, bool partlySaturated, LogView view, int from, int to)
    {
        var doubts = new List<string>();
        if (partlySaturated)
        {
            doubts.Add("the sensor was at its end for part of it");
        }

        if (regime is Regime.Overrun)
        {
            doubts.Add("overrun: little or nothing burns, λ says nothing of the jets");
        }

        if (Scatters(regime, mean) is { } scatter)
        {
            doubts.Add(scatter);
        }

        if (regime is Regime.Cruise or Regime.Progression or Regime.Changeover && Math.Abs(mean.Slope) > DriftPerSecond)
        {
            doubts.Add("λ drifts although speed and throttle hold");
        }

        if (view.Grid.Oil is { } oil && oil[from] < 323 && to > from)
        {
            doubts.Add("the oil was still cold");
        }

        return doubts;
    }

    /// <summary>Adds what only several points together tell: λ going lean along a pull.</summary>
    internal static IReadOnlyList<MixturePoint> On(List<MixturePoint> points)
    {
        var fading = points.Where(p => p.Regime is Regime.FullLoad).GroupBy(p => p.Bank).SelectMany(Pulls)
            .Where(pull => pull.Count >= 4 && pull[^1].Lambda - pull[0].Lambda > Again)
            .SelectMany(pull => pull.Skip(pull.Count / 2))
            .ToHashSet(ReferenceEqualityComparer.Instance);
        return
        [
            .. points.Select(p => fading.Contains(p)
                ? p with { Doubts = [.. p.Doubts, "λ goes lean along the pull: the supply (pump, filter, needle valve) before the corrector"] }
                : p),
        ];
    }

    private static string? Scatters(Regime regime, LambdaMean mean) => regime switch
    {
        Regime.Overrun => null,
        Regime.Idle => mean.Mean > MisfireLambda || mean.Deviation > MisfireScatter
            ? "idle reads lean or scatters: a misfire or air leaking into the exhaust reads so whatever the jets"
            : null,
        _ => mean.Deviation > ScatterSteady ? "λ scatters although speed and throttle hold" : null,
    };

    // Points of one bank under full load that follow each other without a break.
    private static IEnumerable<List<MixturePoint>> Pulls(IEnumerable<MixturePoint> ofBank)
    {
        var pull = new List<MixturePoint>();
        foreach (var point in ofBank)
        {
            if (pull.Count > 0 && point.StartSeconds - pull[^1].StartSeconds - pull[^1].Seconds > Between)
            {
                yield return pull;
                pull = [];
            }

            pull.Add(point);
        }

        yield return pull;
    }
}
