using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.JetChoice;

/// <summary>Tries every set of the candidates.</summary>
internal sealed class JetSearch(JetGround ground, IForecast forecast, Car car)
{
    internal const double CostOfEffort = 0.003;           // so that nothing is changed that does nothing worth the work; assumed
    private const int MostRounds = 8;
    private const double QuarterTurn = 0.25;
    private readonly JetSet _fitted = JetSet.Fitted(car);
    private readonly CostTable _table = new(ground);
    private readonly Dictionary<string, double> _full = new(StringComparer.Ordinal);
    private readonly Dictionary<(double Choke, string? Tube), ResponseSurface> _surfaces = [];

    /// <summary>The best sets of each of several lists of candidates. A choke with a tube is worked up once for all lists it stands in.</summary>
    internal IReadOnlyList<JetContest> Run(IReadOnlyList<JetCandidates> pools, IProgress<string>? progress, CancellationToken cancellation)
    {
        var all = JetCandidates.Union(pools);
        var contests = pools.Select(_ => new JetContest()).ToArray();
        foreach (var (tube, choke) in all.Tubes.SelectMany(_ => all[JetParts.Choke], (t, c) => (t, c)))
        {
            cancellation.ThrowIfCancellationRequested();
            progress?.Report($"Trying sets with choke {JetParts.Choke.Text(choke)}{(tube is null ? string.Empty : " and tube " + tube.Code)}");
            var body = _fitted.With(JetParts.Choke, choke) with { Tube = tube };
            if (body.On(car) is null || !pools.Any(p => p.Holds(choke, tube)))
            {
                continue;
            }

            var surface = new ResponseSurface(ground, all, (car, body), forecast, cancellation);
            _surfaces[(choke, tube?.Code)] = surface;
            for (var k = 0; k < pools.Count; k++)
            {
                if (pools[k].Holds(choke, tube))
                {
                    contests[k].Take(Body(surface, pools[k], body, cancellation), tube is null && choke == JetParts.Choke.Fitted(car), pools[k].PerBody);
                }
            }
        }

        return contests;
    }

    /// <summary>
    /// Betters a set by single steps, each computed in full: makes good what the quick reckoning left out. Choke and tube stay.
    /// </summary>
    internal JetSet Polish(JetSet set, JetCandidates candidates, int mostChanged, CancellationToken cancellation)
    {
        var (best, cost) = (set, Full(set, cancellation));
        for (var round = 0; round < MostRounds; round++)
        {
            var steps = JetParts.All.Where(p => p != JetParts.Choke).SelectMany(p => Steps(best, p, candidates[p])).Where(s => Changed(s) <= mostChanged);
            var (next, better) = steps.Select(s => (Set: s, Cost: Full(s, cancellation))).DefaultIfEmpty((best, cost)).MinBy(s => s.Item2);
            if (better >= cost)
            {
                break;
            }

            (best, cost) = (next, better);
        }

        return best;
    }

    /// <summary>Parts other than the fitted, settings not among them.</summary>
    internal int Changed(JetSet set) => Effort(set, set.Sizes[2], set.Sizes[3], set.Sizes[4]).Changed;

    /// <summary>How far the quick reckoning of a set was from the full one, as a part of λ: root of the mean square by how much points count.</summary>
    internal double QuickError(JetSet set, CancellationToken cancellation)
    {
        var quick = _surfaces[(set.Sizes[0], set.Tube?.Code)].Whole(set);
        var full = ground.Read(forecast.Equivalence(set.On(car)!, cancellation), CalibrationGrid.Of(car));
        return Math.Sqrt(ground.Cells.Select((p, c) => ground.Weights[p] * Math.Pow(Math.Log(quick[c]) + full[p], 2)).Sum());
    }

    private double Full(JetSet set, CancellationToken cancellation)
    {
        if (!_full.TryGetValue(set.Key, out var cost))
        {
            _full.Add(set.Key, cost = Computed(set, cancellation));
        }

        return cost;
    }

    private double Computed(JetSet set, CancellationToken cancellation)
    {
        if (set.On(car) is not { } made)
        {
            return double.PositiveInfinity;
        }

        var map = ground.Read(forecast.Equivalence(made, cancellation), CalibrationGrid.Of(made));
        return _table.Cost([.. ground.Cells.Select(p => Math.Exp(-map[p]))], new double[ground.Cells.Count])
            + CostOfEffort * Effort(set, set.Sizes[2], set.Sizes[3], set.Sizes[4]).Effort;
    }

    // a screw is set by the quarter turn once the rest is chosen
    private static IEnumerable<JetSet> Steps(JetSet set, JetPart part, IReadOnlyList<double> sizes)
    {
        if (part == JetParts.Screw)
        {
            foreach (var turns in new[] { -QuarterTurn, QuarterTurn }.Select(t => set.Sizes[JetParts.All.ToList().IndexOf(part)] + t))
            {
                if (turns >= part.Series.Smallest && turns <= part.Series.Largest)
                {
                    yield return set.With(part, turns);
                }
            }

            yield break;
        }

        var at = sizes.ToList().IndexOf(set.Sizes[JetParts.All.ToList().IndexOf(part)]);
        foreach (var k in new[] { at - 1, at + 1 })
        {
            if (at >= 0 && k >= 0 && k < sizes.Count)
            {
                yield return set.With(part, sizes[k]);
            }
        }
    }

    private Contest Body(ResponseSurface surface, JetCandidates candidates, JetSet body, CancellationToken cancellation)
    {
        var idles = IdleSides(surface, candidates);
        var mains = candidates[JetParts.MainJet].SelectMany(_ => candidates[JetParts.AirCorrector], (m, k) => (Main: m, Corrector: k))
            .SelectMany(_ => candidates[JetParts.FloatLevel], (s, l) => (s.Main, s.Corrector, Level: l)).ToArray();
        var best = new Contest();
        var gate = new Lock();
        Parallel.ForEach(
            mains,
            new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = 2 },
            () => new Contest(),
            (main, _, own) =>
            {
                Mains(surface, body, main, idles, own);
                return own;
            },
            own =>
            {
                lock (gate)
                {
                    best.Take(own);
                }
            });
        return best;
    }

    private void Mains(
        ResponseSurface surface, JetSet body, (double Main, double Corrector, double Level) main, List<(double Idle, double Bleed, double Screw, double[] Adds)> idles, Contest best)
    {
        var own = surface.Middle();
        surface.Add(own, JetParts.MainJet, main.Main);
        surface.Add(own, JetParts.AirCorrector, main.Corrector);
        surface.Add(own, JetParts.FloatLevel, main.Level);
        surface.Add(own, JetParts.MainJet, main.Main, JetParts.AirCorrector, surface.Z(JetParts.AirCorrector, main.Corrector));
        surface.Add(own, JetParts.MainJet, main.Main, JetParts.FloatLevel, surface.Z(JetParts.FloatLevel, main.Level));
        surface.Add(own, JetParts.AirCorrector, main.Corrector, JetParts.FloatLevel, surface.Z(JetParts.FloatLevel, main.Level));
        var set = body.With(JetParts.MainJet, main.Main).With(JetParts.AirCorrector, main.Corrector).With(JetParts.FloatLevel, main.Level);
        var withIdle = new double[own.Length];
        var lastIdle = double.NaN;
        foreach (var (idle, bleed, screw, adds) in idles)
        {
            if (idle != lastIdle)
            {
                own.CopyTo(withIdle, 0);
                surface.Add(withIdle, JetParts.MainJet, main.Main, JetParts.IdleJet, surface.Z(JetParts.IdleJet, idle));
                surface.Add(withIdle, JetParts.FloatLevel, main.Level, JetParts.IdleJet, surface.Z(JetParts.IdleJet, idle));
                lastIdle = idle;
            }

            var (effort, changed) = Effort(set, idle, bleed, screw);
            best.Offer(changed, _table.Cost(withIdle, adds) + CostOfEffort * effort, set, idle, bleed, screw);
        }
    }

    private static List<(double Idle, double Bleed, double Screw, double[] Adds)> IdleSides(ResponseSurface surface, JetCandidates candidates)
    {
        var sides = new List<(double, double, double, double[])>();
        foreach (var idle in candidates[JetParts.IdleJet])
        {
            foreach (var bleed in candidates[JetParts.IdleBleed])
            {
                foreach (var screw in candidates[JetParts.Screw])
                {
                    var adds = new double[surface.Middle().Length];
                    surface.Add(adds, JetParts.IdleJet, idle);
                    surface.Add(adds, JetParts.IdleBleed, bleed);
                    surface.Add(adds, JetParts.Screw, screw);
                    surface.Add(adds, JetParts.IdleJet, idle, JetParts.IdleBleed, surface.Z(JetParts.IdleBleed, bleed));
                    surface.Add(adds, JetParts.IdleJet, idle, JetParts.Screw, surface.Z(JetParts.Screw, screw));
                    surface.Add(adds, JetParts.IdleBleed, bleed, JetParts.Screw, surface.Z(JetParts.Screw, screw));
                    sides.Add((idle, bleed, screw, adds));
                }
            }
        }

        return sides;
    }

    private (double Effort, int Changed) Effort(JetSet set, double idle, double bleed, double screw)
    {
        var (effort, changed) = (set.Tube is null ? 0.0 : 2, set.Tube is null ? 0 : 1);
        for (var i = 0; i < JetParts.All.Count; i++)
        {
            var part = JetParts.All[i];
            var size = part == JetParts.IdleJet ? idle : part == JetParts.IdleBleed ? bleed : part == JetParts.Screw ? screw : set.Sizes[i];
            if (size != _fitted.Sizes[i])
            {
                effort += part.Effort;
                changed += part.IsSetting ? 0 : 1;
            }
        }

        return (effort, changed);
    }
}
