using Tickover.Workshop.Logs;
using Tickover.Workshop.Mixture;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.JetFittings;

/// <summary>What runs with the same jets showed, regime by regime.</summary>
public sealed record RunShowing
{
    // Tip-in and overrun are no mixture of a held regime: nothing is aimed at there.
    private static readonly Regime[] Held = [Regime.Idle, Regime.Progression, Regime.Changeover, Regime.Cruise, Regime.FullLoad];

    private RunShowing(JetsIn jets, IReadOnlyList<RoadRun> runs) => (Jets, Runs) = (jets, runs);

    /// <summary>The jets.</summary>
    public JetsIn Jets { get; }

    /// <summary>The runs, oldest first.</summary>
    public IReadOnlyList<RoadRun> Runs { get; }

    /// <summary>What was read, by regime, in the order of opening; regimes not driven are left out.</summary>
    public IReadOnlyList<RegimeShowing> Regimes => [.. Held.Select(Of).OfType<RegimeShowing>()];

    /// <summary>Readings in all.</summary>
    public int Readings => Regimes.Sum(r => r.Readings);

    /// <summary>Readings in target.</summary>
    public int InTarget => Regimes.Sum(r => r.InTarget);

    /// <summary>Names of the logs.</summary>
    public string Names => string.Join(", ", Runs.Select(r => r.Name));

    /// <summary>The runs of a visit that count, those with the same jets together, in the order they were driven.</summary>
    /// <param name="runs">Runs of a visit.</param>
    /// <returns>One showing for every set of jets; a set that was put back begins anew.</returns>
    public static IReadOnlyList<RunShowing> ByJets(IEnumerable<RoadRun> runs)
    {
        ArgumentNullException.ThrowIfNull(runs);
        List<RunShowing> showings = [];
        foreach (var run in runs.Where(r => !r.LeftOut).OrderBy(r => r.On).ThenBy(r => r.Kept))
        {
            if (JetsIn.Of(run.Document) is not { } jets)
            {
                continue;
            }

            if (showings is [.., var last] && last.Jets.Same(jets))
            {
                showings[^1] = new RunShowing(jets, [.. last.Runs, run]);
            }
            else
            {
                showings.Add(new RunShowing(jets, [run]));
            }
        }

        return showings;
    }

    private RegimeShowing? Of(Regime regime)
    {
        var points = Runs.SelectMany(r => r.Points).Where(p => p.Regime == regime).Select(p => (p.Lambda, Target: Target(p))).ToList();
        return points.Count == 0
            ? null
            : new RegimeShowing(
                regime, points.Count, points.Count(p => p.Lambda >= p.Target.Richest && p.Lambda <= p.Target.Leanest), points.Average(p => p.Lambda),
                points.Min(p => p.Lambda), points.Max(p => p.Lambda), points.Average(p => p.Target.Richest), points.Average(p => p.Target.Leanest));
    }

    // Where a log has no opening, the middle of the regime's (trade reference 3.1, common practice).
    private static LambdaBand Target(MixturePoint point) => MixtureTargets.At(point.ThrottleDegrees ?? point.Regime switch
    {
        Regime.Idle => 2,
        Regime.Progression => 9,
        Regime.Changeover => 17,
        Regime.Cruise => 25,
        _ => 75,
    });
}
