using Tickover.Physics.Balancing;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Calibration;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Finds the fewest turns, as a person can make them, that bring all barrels within their limit.</summary>
/// <remarks>
/// Carburettors are levelled by what moves them as a whole, barrels of one carburettor by the by-pass of the lower. Every subset of the former is tried with
/// every choice of by-passes: the least-squares turns of each subset are one product, so that twelve barrels take milliseconds.
/// </remarks>
internal sealed class MovePlanner
{
    private const double Enough = 0.92;                     // part of the limit; the last of it is left to what is not foreseen
    private const double DoubtNow = 0.06;                   // of the worst deviation as read, in limits
    private const double DoubtAfter = 0.2;                  // of the worst deviation foreseen
    private const double WorthATurn = 0.12;                 // limits by which the worst barrel must come nearer
    private const double MoreTurns = 3;
    private const double SpeedCosts = 6;                    // turns for the whole of the idle speed
    private const double SpeedLeave = 0.10;                 // part of the idle speed that is left to the end
    private const double LeftOutside = 6;                  // turns: more than any car needs
    private const double NoBypassBelow = 0.3;               // half the difference of a carburettor's barrels, in limits
    private const double MostSubsets = 1 << 12;

    private readonly EnginePlan _plan;
    private readonly IReadOnlyList<Condition> _conditions;
    private readonly double[] _limits;
    private readonly double[] _bankLimits;
    private readonly List<int[]> _banks;                    // places of barrels, by bank
    private readonly List<Adjuster> _movers;
    private readonly bool _bypasses;
    private readonly Func<Adjuster, double, double> _within;
    private readonly List<double[]> _levels;                // by condition, by barrel
    private readonly PlatesAtRest? _rest;
    private readonly BalanceLimits _all;

    /// <summary>Begins.</summary>
    /// <param name="conditions">Idle alone, or the held speeds together.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="usable">Whether an adjuster may be turned at all.</param>
    /// <param name="within">A turn kept within what is left of a screw's travel.</param>
    /// <param name="rest">For held speeds: where plates will rest at idle as rods are changed; null where that is not known.</param>
    public MovePlanner(IReadOnlyList<Condition> conditions, BalanceLimits limits, Func<Adjuster, bool> usable, Func<Adjuster, double, double> within, PlatesAtRest? rest = null)
    {
        (_plan, _conditions, _within, _rest, _all) = (conditions[0].Plan, conditions, within, rest, limits);
        _bypasses = conditions[0].IsIdle;
        _limits = [.. conditions.Select(c => limits.OffMean(c.IsIdle, c.Mean))];
        _bankLimits = [.. conditions.Select(c => limits.BanksApart(c.IsIdle, c.Mean))];
        _banks = [.. _plan.Barrels.GroupBy(b => b.Bank).Select(g => g.Select(b => b.Number - 1).ToArray())];
        _levels = [.. conditions.Select(c => c.Rows.Select(r => r.Level).ToArray())];
        _movers = [.. _plan.Adjusters.Where(a => usable(a) && a.Kind != AdjusterKind.BypassScrew && a.Barrels.Count < _plan.Barrels.Count && conditions.Any(c => c.Nominal.Own(a) > 0))];
        Bypass = [.. _plan.Adjusters.Where(a => _bypasses && usable(a) && a.Kind == AdjusterKind.BypassScrew)];
    }

    private List<Adjuster> Bypass { get; }

    /// <summary>Makes the plan.</summary>
    /// <returns>The plan that costs fewest turns, those counted that it may still need when it fails; no turns where that is leaving all as it is.</returns>
    public MovePlan Make()
    {
        var now = Worst([]);
        var best = new MovePlan([], now, SpeedOff([]), now, Doubt());
        var choices = BypassChoices();
        foreach (var subset in Subsets().OrderBy(s => s.Count))
        {
            var solve = Solver(subset);
            foreach (var bypasses in choices)
            {
                var turns = Quantised([.. bypasses, .. solve(bypasses)]);
                var plan = new MovePlan(turns, Worst(turns), SpeedOff(turns), now, best.Doubt);
                best = plan.Worst < now - WorthATurn && Cost(plan) < Cost(best) - 1e-9 ? plan : best;
            }
        }

        return best with { Turns = [.. best.Turns.OrderBy(t => t.Adjuster.Kind == AdjusterKind.BypassScrew).ThenByDescending(t => Gain(t))] };
    }

    private double Gain((Adjuster Adjuster, double Turns) turn) => Math.Abs(turn.Turns) * _conditions.Average(c => Math.Abs(c.Nominal.Own(turn.Adjuster)));

    // turns; those it may still need where it is foreseen to fail; and a price on leaving anything outside
    private static double Cost(MovePlan plan) => (LeftOutside * Math.Max(0, plan.Worst - 1)) + (plan.Turns.Count == 0
        ? LeftOutside * Normal.Below((plan.Worst - Enough) / DoubtNow)
        : plan.Turns.Count + (MoreTurns * Normal.Below((plan.Worst - Enough) / DoubtAfter)) + (0.05 * plan.Worst) + (SpeedCosts * Math.Max(0, plan.SpeedOff - SpeedLeave)));

    private IEnumerable<List<Adjuster>> Subsets()
    {
        var count = Math.Min(1 << Math.Min(_movers.Count, 12), (int)MostSubsets);
        for (var mask = 0; mask < count; mask++)
        {
            yield return [.. _movers.Where((_, j) => (mask >> j & 1) == 1)];
        }
    }

    // each carburettor whose barrels differ may have the lower ones opened to the highest, or not
    private List<List<(Adjuster, double)>> BypassChoices()
    {
        List<List<(Adjuster, double)>> choices = [[]];
        foreach (var carburettor in _plan.Carburettors.Where(_ => _bypasses))
        {
            var levels = carburettor.Barrels.Select(b => _levels[0][b - 1]).ToList();
            if (carburettor.Barrels.Count < 2 || (levels.Max() - levels.Min()) / 2 < NoBypassBelow * _limits[0])
            {
                continue;
            }

            var opened = Bypass.Where(a => carburettor.Barrels.Contains(a.Barrels[0]) && levels.Max() - _levels[0][a.Barrels[0] - 1] > 0.2 * _limits[0])
                .Select(a => (a, (levels.Max() - _levels[0][a.Barrels[0] - 1]) / Learned(_conditions[0], a))).ToList();
            choices = opened.Count > 0 && choices.Count < 64 ? [.. choices, .. choices.Select(c => c.Concat(opened).ToList())] : choices;
        }

        return choices;
    }

    // least squares on the deviations of the carburettors from their mean, every condition weighed by its limit
    private Func<List<(Adjuster, double)>, IEnumerable<(Adjuster, double)>> Solver(List<Adjuster> subset)
    {
        if (subset.Count == 0)
        {
            return _ => [];
        }

        var columns = subset.ConvertAll(a => Deviations([.. _conditions.Select(c => Effect(c, a))]).ToArray());
        var influence = new double[columns[0].Length, columns.Count];
        for (var j = 0; j < columns.Count; j++)
        {
            for (var i = 0; i < columns[j].Length; i++)
            {
                influence[i, j] = columns[j][i];
            }
        }

        var inverse = InfluenceTurns.Inverse(influence);
        return bypasses =>
        {
            var after = _levels.ConvertAll(l => l.ToArray());
            Apply(after, bypasses);
            double[] residuals = [.. Deviations(after)];
            return subset.Select((a, j) => (a, -residuals.Select((r, i) => inverse[j, i] * r).Sum()));
        };
    }

    private double[] Effect(Condition condition, Adjuster adjuster)
    {
        var place = condition.Place(adjuster);
        return condition.Nominal.Own(adjuster) > 0 ? [.. condition.Rows.Select(r => r.Gain(place))] : new double[_plan.Barrels.Count];
    }

    // means of carburettors off their common mean and of the banks apart, in limits
    private IEnumerable<double> Deviations(List<double[]> levels)
    {
        for (var c = 0; c < levels.Count; c++)
        {
            var means = _plan.Carburettors.Select(k => k.Barrels.Average(b => levels[c][b - 1])).ToList();
            foreach (var mean in means)
            {
                yield return (mean - means.Average()) / _limits[c];
            }

            if (_banks.Count == 2)
            {
                yield return (_banks[0].Average(b => levels[c][b]) - _banks[1].Average(b => levels[c][b])) / _bankLimits[c];
            }
        }
    }

    // what the levels are known to, in limits
    private double Doubt() => _conditions.Select((c, i) => Math.Sqrt(c.Rows.Average(r => r.LevelVariance)) / _limits[i]).Max();

    // near idle, speed goes as the air that all barrels pass together
    private double SpeedOff(IReadOnlyList<(Adjuster, double)> turns)
    {
        if (_conditions is not [{ IsIdle: true, Rpm: { } rpm }] || rpm <= 0)
        {
            return 0;
        }

        var after = _levels.ConvertAll(l => l.ToArray());
        Apply(after, turns);
        return Math.Abs((after[0].Average() / _levels[0].Average() * rpm / _plan.IdleRpm) - 1);
    }

    private double BanksApart(double[] levels)
    {
        var means = _banks.ConvertAll(bank => bank.Average(b => levels[b]));
        return means.Max() - means.Min();
    }

    private void Apply(List<double[]> levels, IEnumerable<(Adjuster Adjuster, double Turns)> turns)
    {
        foreach (var (adjuster, x) in turns)
        {
            for (var c = 0; c < levels.Count; c++)
            {
                var effect = Effect(_conditions[c], adjuster);
                for (var b = 0; b < effect.Length; b++)
                {
                    levels[c][b] += x * effect[b];
                }
            }
        }
    }

    private double Worst(IReadOnlyList<(Adjuster, double)> turns)
    {
        var after = _levels.ConvertAll(l => l.ToArray());
        Apply(after, turns);
        var worst = after.Select((levels, c) => Outside(levels, _limits[c], _bankLimits[c])).Max();
        return _rest?.Levels(after[0]) is { } idle ? Math.Max(worst, Outside(idle, _all.OffMean(idle: true, idle.Average()), _all.BanksApart(idle: true, idle.Average()))) : worst;
    }

    private double Outside(double[] levels, double limit, double bankLimit) => Math.Max(levels.Max(l => Math.Abs(l - levels.Average())) / limit, BanksApart(levels) / bankLimit);

    private List<(Adjuster, double)> Quantised(IEnumerable<(Adjuster Adjuster, double Turns)> turns) =>
        [.. turns.Select(t => (t.Adjuster, Math.Round(_within(t.Adjuster, t.Turns) * t.Adjuster.StepsATurn) / t.Adjuster.StepsATurn)).Where(t => t.Item2 != 0)];

    private static double Learned(Condition condition, Adjuster adjuster) => Math.Max(condition.Learned(adjuster).Gain, 0.3 * condition.Nominal.Own(adjuster));
}
