using MathNet.Numerics.LinearAlgebra;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Finds the fewest turns, as a person can make them, that bring all barrels within their limit.</summary>
/// <remarks>
/// Carburettors are levelled by what moves them as a whole, barrels of one carburettor by the by-pass of the lower. Every subset of the former is tried with
/// every choice of by-passes: the least-squares turns of each subset are one product, so that twelve barrels take milliseconds.
/// </remarks>
internal sealed class MovePlanner
{
    private const double Aim = 0.6;                         // part of the limit: what is foreseen must leave room for what is not
    private const double NoBypassBelow = 0.3;               // half the difference of a carburettor's barrels, in limits
    private const double MostSubsets = 1 << 12;

    private readonly EnginePlan _plan;
    private readonly IReadOnlyList<Condition> _conditions;
    private readonly double[] _limits;
    private readonly List<Adjuster> _movers;
    private readonly bool _bypasses;
    private readonly Func<Adjuster, double, double> _within;
    private readonly List<double[]> _levels;                // by condition, by barrel

    /// <summary>Begins.</summary>
    /// <param name="conditions">Idle alone, or the held speeds together.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="usable">Whether an adjuster may be turned at all.</param>
    /// <param name="within">A turn kept within what is left of a screw's travel.</param>
    public MovePlanner(IReadOnlyList<Condition> conditions, BalanceLimits limits, Func<Adjuster, bool> usable, Func<Adjuster, double, double> within)
    {
        (_plan, _conditions, _within) = (conditions[0].Plan, conditions, within);
        _bypasses = conditions[0].IsIdle;
        _limits = [.. conditions.Select(c => limits.OffMean(c.IsIdle, c.Mean))];
        _levels = [.. conditions.Select(c => c.Rows.Select(r => r.Level).ToArray())];
        _movers = [.. _plan.Adjusters.Where(a => usable(a) && a.Kind != AdjusterKind.BypassScrew && a.Barrels.Count < _plan.Barrels.Count && conditions.Any(c => c.Nominal.Own(a) > 0))];
        Bypass = [.. _plan.Adjusters.Where(a => _bypasses && usable(a) && a.Kind == AdjusterKind.BypassScrew)];
    }

    private List<Adjuster> Bypass { get; }

    /// <summary>Makes the plan.</summary>
    /// <returns>The plan with the fewest turns that reaches the aim, or the best there is.</returns>
    public MovePlan Make()
    {
        var now = Worst([]);
        var best = new MovePlan([], now, now);
        var choices = BypassChoices();
        foreach (var subset in Subsets().OrderBy(s => s.Count))
        {
            var solve = Solver(subset);
            foreach (var bypasses in choices)
            {
                var turns = Quantised([.. bypasses, .. solve(bypasses)]);
                var plan = new MovePlan(turns, Worst(turns), now);
                best = Better(plan, best) ? plan : best;
            }
        }

        return best with { Turns = [.. best.Turns.OrderBy(t => t.Adjuster.Kind == AdjusterKind.BypassScrew).ThenByDescending(t => Gain(t))] };
    }

    private double Gain((Adjuster Adjuster, double Turns) turn) => Math.Abs(turn.Turns) * _conditions.Average(c => Math.Abs(c.Nominal.Own(turn.Adjuster)));

    private static bool Better(MovePlan plan, MovePlan best) => (plan.Worst <= Aim, best.Worst <= Aim) switch
    {
        (true, true) => plan.Turns.Count < best.Turns.Count || (plan.Turns.Count == best.Turns.Count && plan.Worst < best.Worst - 1e-9),
        (true, false) => true,
        (false, true) => false,
        // a turn must be worth making
        _ => plan.Worst + (0.08 * plan.Turns.Count) < best.Worst + (0.08 * best.Turns.Count) - 1e-9,
    };

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

        var influence = Matrix<double>.Build.DenseOfColumns(subset.Select(a => Deviations([.. _conditions.Select(c => Effect(c, a))])));
        var inverse = influence.PseudoInverse();
        return bypasses =>
        {
            var after = _levels.ConvertAll(l => l.ToArray());
            Apply(after, bypasses);
            var turns = inverse * Vector<double>.Build.DenseOfEnumerable(Deviations(after));
            return subset.Select((a, j) => (a, -turns[j]));
        };
    }

    private double[] Effect(Condition condition, Adjuster adjuster)
    {
        var place = condition.Place(adjuster);
        return condition.Nominal.Own(adjuster) > 0 ? [.. condition.Rows.Select(r => r.Gain(place))] : new double[_plan.Barrels.Count];
    }

    // means of carburettors off their common mean, in limits
    private IEnumerable<double> Deviations(List<double[]> levels)
    {
        for (var c = 0; c < levels.Count; c++)
        {
            var means = _plan.Carburettors.Select(k => k.Barrels.Average(b => levels[c][b - 1])).ToList();
            foreach (var mean in means)
            {
                yield return (mean - means.Average()) / _limits[c];
            }
        }
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
        return after.Select((levels, c) => levels.Max(l => Math.Abs(l - levels.Average())) / _limits[c]).Max();
    }

    private List<(Adjuster, double)> Quantised(IEnumerable<(Adjuster Adjuster, double Turns)> turns) =>
        [.. turns.Select(t => (t.Adjuster, Math.Round(_within(t.Adjuster, t.Turns) * t.Adjuster.StepsATurn) / t.Adjuster.StepsATurn)).Where(t => t.Item2 != 0)];

    private static double Learned(Condition condition, Adjuster adjuster) => Math.Max(condition.Learned(adjuster).Gain, 0.3 * condition.Nominal.Own(adjuster));
}
