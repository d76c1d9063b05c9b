using Tickover.Physics.Estimation;
using Tickover.Physics.Linkages;

namespace Tickover.Workshop.Linkages.Working;

/// <summary>Searches the rod lengths, couplings and clamps that make all carburettors follow the reference over the travel.</summary>
/// <remarks>
/// One adjuster after another is taken in, the one that promises most by the slopes, until the linkage is within its limits; rods and screws
/// before lever clamps. Those taken in are set by least squares of the mismatch in units of the limit, with a slight pull towards leaving
/// things as they are; then in whole steps of their threads, bettered step by step, and what does not earn its spanner is taken out again.
/// </remarks>
internal sealed class Equaliser
{
    private const int Positions = 25;
    private const double WidestLimitDegrees = 3;   // wide open a degree is no air at all
    private const double PullPerStep = 0.02;       // in limits: a hand moves a step only for more than this
    private const double Earned = 1.03;            // a move that betters the sum of squares by less than 3 % is left out
    private const int MostRounds = 30;
    private const int MostMoves = 6;
    private const int MostSteps = 30;

    private readonly Linkage _linkage;
    private readonly int _reference;
    private readonly int[] _carburettors;
    private readonly double[] _pedals;
    private readonly double[] _limitDegrees;
    private readonly double[][] _lags;

    public Equaliser(LinkageMotion motion, int reference, LinkageLimits limits)
    {
        (_linkage, _reference) = (motion.Linkage, reference);
        _carburettors = [.. _linkage.Carburettors];
        const double clearOfDeadPoint = 0.95;
        var end = motion.End is TravelEnd.DeadPoint ? motion.EndDegrees * clearOfDeadPoint : motion.EndDegrees;
        _pedals = [.. Enumerable.Range(0, Positions).Select(i => end * i / (Positions - 1))];

        // Limits and wind-up are those of the linkage as it is; what is set hardly alters them, and so the mismatch stays nearly straight.
        var angles = _pedals.Select(p => motion.Angles(p)[reference]).ToArray();
        var heldOff = angles[0] - _linkage.Shafts[_carburettors[reference]].Throttle!.IdleDegrees;
        _limitDegrees = [.. angles.Select(a => LimitDegrees(a - heldOff, limits))];
        _lags = [.. _pedals.Select((p, k) => k == 0 ? new double[_carburettors.Length] : Lags(motion, p))];
    }

    /// <summary>The fewest moves that do, from the pedal outwards; the best there are where none do.</summary>
    /// <param name="adjusters">What can be set.</param>
    /// <param name="isEnough">Whether a set of moves does.</param>
    /// <param name="cancellation">Stops the work.</param>
    public IReadOnlyList<LinkageMove> Moves(IReadOnlyList<LinkageAdjuster> adjusters, Func<IReadOnlyList<LinkageMove>, bool> isEnough, CancellationToken cancellation)
    {
        if (adjusters.Count == 0 || !double.IsFinite(Cost(adjusters, new double[adjusters.Count])))
        {
            return [];
        }

        var picked = new List<int>();
        IReadOnlyList<LinkageMove> moves = [];
        var cost = Cost([], []);
        var turns = new LinearTurns(adjusters, (all, set) => Residuals(all, set));
        while (picked.Count < MostMoves && turns.Best(picked) is { } next)
        {
            picked.Add(next);
            var (tried, after) = Settled([.. picked.Order().Select(i => adjusters[i])], cancellation);
            if (cost <= Earned * after && turns.IsLast(picked))
            {
                break;
            }

            (moves, cost) = after < cost ? (tried, after) : (moves, cost);
            if (isEnough(moves))
            {
                break;
            }
        }

        return moves;
    }

    private (IReadOnlyList<LinkageMove> Moves, double Cost) Settled(LinkageAdjuster[] some, CancellationToken cancellation)
    {
        var free = LeastSquares.Solve(x => Residuals(some, x), new double[some.Length], new LeastSquaresSettings { Scale = [.. some.Select(a => a.Step)], MaximumSteps = MostSteps }, cancellation);
        var set = Pruned(some, Bettered(some, Stepped(some, free.Parameters), cancellation));
        return ([.. some.Select((a, i) => new LinkageMove(a, set[i])).Where(m => m.More != 0)], Cost(some, set));
    }

    private static double[] Stepped(LinkageAdjuster[] adjusters, IReadOnlyList<double> values) =>
        [.. adjusters.Select((a, i) => Math.Round(values[i] / a.Step) * a.Step)];

    private double[] Bettered(LinkageAdjuster[] adjusters, double[] set, CancellationToken cancellation)
    {
        var best = Cost(adjusters, set);
        for (var round = 0; round < MostRounds; round++)
        {
            cancellation.ThrowIfCancellationRequested();
            var before = best;
            for (var i = 0; i < adjusters.Length; i++)
            {
                foreach (var way in new[] { -1, 1 })
                {
                    double[] tried = [.. set];
                    tried[i] += way * adjusters[i].Step;
                    var cost = Cost(adjusters, tried);
                    (set, best) = cost < best ? (tried, cost) : (set, best);
                }
            }

            if (best >= before)
            {
                break;
            }
        }

        return set;
    }

    private double[] Pruned(LinkageAdjuster[] adjusters, double[] set)
    {
        foreach (var i in Enumerable.Range(0, set.Length).OrderBy(i => Math.Abs(set[i] / adjusters[i].Step)))
        {
            double[] without = [.. set];
            without[i] = 0;
            set = Cost(adjusters, without) <= Earned * Cost(adjusters, set) ? without : set;
        }

        return set;
    }

    private double Cost(IReadOnlyList<LinkageAdjuster> adjusters, double[] set)
    {
        var residuals = Residuals(adjusters, set);
        return Array.TrueForAll(residuals, double.IsFinite) ? residuals.Sum(r => r * r) : double.PositiveInfinity;
    }

    private double[] Residuals(IReadOnlyList<LinkageAdjuster> adjusters, double[] set)
    {
        var linkage = adjusters.Select((a, i) => (a, i)).Aggregate(_linkage, (l, x) => x.a.Set(l, set[x.i]));
        var train = LinkageTrains.Of(linkage);
        var residuals = new List<double>(_pedals.Length * _carburettors.Length + set.Length + 1);
        for (var k = 0; k < _pedals.Length; k++)
        {
            var pose = train.Pose((int)linkage.PedalTurns * double.DegreesToRadians(_pedals[k]));
            var opened = _carburettors.Select((c, i) => (int)linkage.Shafts[c].Throttle!.Opens * double.RadiansToDegrees(pose.Turned[c]) - _lags[k][i]).ToArray();
            residuals.AddRange(opened.Where((_, i) => i != _reference).Select(o => (o - opened[_reference]) / _limitDegrees[k]));
            if (k == 0)
            {
                // With the pedal up the reference sits on its stop.
                residuals.Add(opened[_reference] / _limitDegrees[k]);
            }
        }

        residuals.AddRange(set.Select((s, i) => PullPerStep * s / adjusters[i].Step));
        return [.. residuals];
    }

    // What the limit on air is in degrees where the reference stands.
    private double LimitDegrees(double angle, LinkageLimits limits)
    {
        const double flat = 85; // further on the gap hardly changes
        var areas = new PlateAreas(_linkage.Shafts[_carburettors[_reference]]);
        var part = areas.At(angle) < LinkageLimits.OffIdleFrom * areas.Idle ? limits.IdlePart : limits.OffIdlePart;
        var perDegree = areas.PartPerDegree(Math.Min(angle, flat));
        return perDegree > 0 ? Math.Min(WidestLimitDegrees, part / perDegree) : WidestLimitDegrees;
    }

    private double[] Lags(LinkageMotion motion, double pedal)
    {
        var loads = new SpringLoads(motion.Train, motion.Pose(pedal));
        return
        [
            .. _carburettors.Select(c =>
            {
                var throttle = _linkage.Shafts[c].Throttle!;
                return throttle.PlatesAlongMillimetres.Average(along => -(int)throttle.Opens * double.RadiansToDegrees(loads.Lag(c, along / 1000)));
            }),
        ];
    }
}
