namespace Tickover.Workshop.Logs;

/// <summary>Finds the transport delay: the one that lets speed and opening explain λ best.</summary>
/// <remarks>
/// A correlation ratio instead of a linear correlation, since λ may go either way when a throttle opens: samples near changes are put in
/// classes of like speed and opening, and the delay is the one whose λ varies least inside the classes. The delay is a fixed part, and the time in which the flow pushes a mass b on: b / air flow while it holds.
/// </remarks>
internal sealed class DelaySearch
{
    private const double UsualFixed = 0.15;              // s: sensor 0.05 to 0.15 and display (trade reference 6)
    private const double UsualPipe = 0.014;              // kg: some 35 litres of gas at 900 K (trade reference 6, common practice)
    private const double MostFixed = 0.6;
    private const double MostPipe = 0.05;
    private const double FixedStep = 0.05;
    private const double PipeStep = 0.0025;
    private const double Correlated = 1.0;               // s: neighbouring errors of λ go together about so long
    private const double LeastGain = 0.03;
    private const double Near = 3;                       // s on both sides of a change
    private const int MostSamples = 40_000;
    private const int FewestSamples = 100;

    private readonly double[][] _lambdas;
    private readonly double _step;
    private readonly double[] _air;
    private readonly int[] _samples;
    private readonly int[] _classes;
    private readonly int _classCount;

    internal DelaySearch(LogGrid grid, double[] air, double[]? degrees, Func<int, bool> usable)
    {
        (_lambdas, _step, _air) = (grid.Lambdas, grid.Step, air);
        var load = degrees ?? grid.Manifold!.Select(p => p / 1000).ToArray();
        _samples = [.. NearChanges(load, grid.SpeedRpm, usable).Take(MostSamples)];
        var keys = _samples.Select(i => (Load: (int)Math.Floor(degrees is null ? load[i] / 6 : 6 * Math.Log(1 + Math.Max(0, load[i]) / 3)), Speed: (int)Math.Floor(Math.Log(grid.SpeedRpm[i]) / 0.15))).ToArray();
        var known = keys.Distinct().Select((k, i) => (k, i)).ToDictionary(p => p.k, p => p.i);
        _classes = [.. keys.Select(k => known[k])];
        _classCount = known.Count;
    }

    internal LogDelay Find()
    {
        var flows = _samples.Select(i => _air[i]).Order().ToArray();
        if (flows.Length < FewestSamples)
        {
            return Usual(flows);
        }

        var tried = new List<(double A, double B, double Scatter)>();
        for (var b = 0.0; b <= MostPipe; b += PipeStep)
        {
            var later = PipeClock.Arrivals(_air, _step, b);
            for (var a = 0.0; a <= MostFixed; a += FixedStep)
            {
                tried.Add((a, b, Scatter(a, later)));
            }
        }

        var rough = tried.MinBy(t => t.Scatter);
        for (var b = -4; b <= 4; b++)
        {
            var pipe = Math.Max(0, rough.B + b * PipeStep / 5);
            var later = PipeClock.Arrivals(_air, _step, pipe);
            for (var a = -2; a <= 2; a++)
            {
                var fixedPart = Math.Max(0, rough.A + a * FixedStep / 4);
                tried.Add((fixedPart, pipe, Scatter(fixedPart, later)));
            }
        }

        return Judged(tried, flows);
    }

    private LogDelay Judged(List<(double A, double B, double Scatter)> tried, double[] flows)
    {
        var best = tried.MinBy(t => t.Scatter);
        var gain = 1 - best.Scatter / tried[0].Scatter;
        var independent = Math.Max(1, flows.Length * _step / Correlated);
        var likely = tried.Where(t => independent * (t.Scatter / best.Scatter - 1) <= 1).ToArray();
        var (slow, fast) = (flows[flows.Length / 10], flows[^(1 + flows.Length / 10)]);
        if (!(gain >= LeastGain))
        {
            return Usual(flows);
        }

        return new LogDelay
        {
            FixedSeconds = best.A,
            PipeKilograms = best.B,
            SlowSeconds = best.A + best.B / slow,
            FastSeconds = best.A + best.B / fast,
            SlowSigma = Math.Max(_step / 4, (likely.Max(t => t.A + t.B / slow) - likely.Min(t => t.A + t.B / slow)) / 2),
            FastSigma = Math.Max(_step / 4, (likely.Max(t => t.A + t.B / fast) - likely.Min(t => t.A + t.B / fast)) / 2),
            Gain = gain,
            Found = true,
        };
    }

    private static LogDelay Usual(double[] flows)
    {
        var (slow, fast) = flows.Length == 0 ? (0.01, 0.05) : (flows[flows.Length / 10], flows[^(1 + flows.Length / 10)]);
        return new LogDelay
        {
            FixedSeconds = UsualFixed,
            PipeKilograms = UsualPipe,
            SlowSeconds = UsualFixed + UsualPipe / slow,
            FastSeconds = UsualFixed + UsualPipe / fast,
            SlowSigma = UsualPipe / slow / 2,
            FastSigma = UsualPipe / fast / 2,
        };
    }

    // Variance of λ inside the classes.
    private double Scatter(double a, double[] later)
    {
        var (all, left, count) = (new double[3 * _classCount], 0.0, 0);
        foreach (var lambda in _lambdas)
        {
            Array.Clear(all);
            for (var s = 0; s < _samples.Length; s++)
            {
                var i = _samples[s];
                var value = LogGrid.Between(lambda, i + later[i] + a / _step);
                if (double.IsFinite(value))
                {
                    var at = 3 * _classes[s];
                    all[at]++;
                    all[at + 1] += value;
                    all[at + 2] += value * value;
                }
            }

            for (var at = 0; at < all.Length; at += 3)
            {
                if (all[at] >= 2)
                {
                    left += all[at + 2] - all[at + 1] * all[at + 1] / all[at];
                    count += (int)all[at] - 1;
                }
            }
        }

        return count > 0 ? left / count : double.PositiveInfinity;
    }

    private IEnumerable<int> NearChanges(double[] load, double[] rpm, Func<int, bool> usable)
    {
        var (near, second) = ((int)Math.Ceiling(Near / _step), Math.Max(1, (int)Math.Round(1 / _step)));
        var last = int.MinValue / 2;
        var next = -1;
        bool Changes(int i) => i >= 0 && i + second < load.Length && (Math.Abs(load[i + second] - load[i]) > 2 || Math.Abs(rpm[i + second] - rpm[i]) > 150);
        for (var i = 0; i < load.Length; i++)
        {
            while (next < i + near && next < load.Length)
            {
                next++;
                last = Changes(next) ? next : last;
            }

            if (i - last <= near && usable(i) && double.IsFinite(load[i]) && _air[i] > 1e-4)
            {
                yield return i;
            }
        }
    }
}
