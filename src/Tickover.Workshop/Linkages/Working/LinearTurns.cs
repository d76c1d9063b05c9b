using Tickover.Physics.Estimation;

namespace Tickover.Workshop.Linkages.Working;

/// <summary>What each adjuster promises by the slopes of the mismatch, so that not every set of them has to be tried in earnest.</summary>
internal sealed class LinearTurns
{
    private const double Promising = 0.97; // an adjuster has to take 3 % off the sum of squares

    private readonly MatchingPursuit _pursuit;
    private readonly int[] _gentle;
    private readonly int[] _clamps;

    public LinearTurns(IReadOnlyList<LinkageAdjuster> adjusters, Func<IReadOnlyList<LinkageAdjuster>, double[], double[]> residuals)
    {
        var rest = residuals(adjusters, new double[adjusters.Count]);
        _pursuit = new MatchingPursuit(rest, [.. adjusters.Select((a, i) => Slope(adjusters.Count, a.Step / 10, i, set => residuals(adjusters, set), rest))]);
        _gentle = [.. Enumerable.Range(0, adjusters.Count).Where(i => adjusters[i].Kind is not LinkageAdjusterKind.Clamp)];
        _clamps = [.. Enumerable.Range(0, adjusters.Count).Except(_gentle)];
    }

    /// <summary>The next adjuster to take in beside those picked, rods and screws before clamps; null where none promises anything.</summary>
    public int? Best(IReadOnlyList<int> picked) => _pursuit.Next(picked, _gentle, Promising) ?? _pursuit.Next(picked, _clamps, Promising);

    /// <summary>Whether nothing is left to take in.</summary>
    public bool IsLast(IReadOnlyList<int> picked) => Best(picked) is null;

    private static double[] Slope(int count, double step, int adjuster, Func<double[], double[]> residuals, double[] rest)
    {
        var set = new double[count];
        set[adjuster] = step;
        return [.. residuals(set).Zip(rest, (r, r0) => (r - r0) / step)];
    }
}
