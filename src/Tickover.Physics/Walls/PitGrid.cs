namespace Tickover.Physics.Walls;

/// <summary>Lays a grid over all pairs (λ, α) that readings allow. docs/physics/walls.md (15), (16).</summary>
/// <remarks>Even steps in ln α and in v = λ/α + ln S(α), where the weight is smooth and dies fast at both ends: sums of even steps are then as good as any rule.</remarks>
internal sealed class PitGrid(PitSample sample)
{
    private const int ScaleSteps = 120;
    private const int LocationSteps = 48;

    // Three readings alone leave α a long tail; 300 times their spread leaves out less than a part in ten thousand of it.
    private const double ScaleUnder = 30, ScaleOver = 300;

    private const double Negligible = 1e-9;

    // A standard deviation of rounding is step/√12, and α is √6/π of a standard deviation.
    private static readonly double RoundingScale = Math.Sqrt(0.5) / Math.PI;

    private readonly double _least = sample.DepthsMetres.Min();
    private readonly double _sum = sample.DepthsMetres.Sum();

    internal PitNode[] Nodes()
    {
        var floor = RoundingScale * Precondition.Positive(sample.StepMetres);
        var spread = Math.Max(GumbelEstimate.Moments(sample.DepthsMetres)?.ScaleMetres ?? 0, floor);
        var (low, high) = (Math.Log(Math.Max(floor, spread / ScaleUnder)), Math.Log(spread * ScaleOver));
        var logs = new List<PitNode>((ScaleSteps + 1) * (LocationSteps + 1));
        for (var i = 0; i <= ScaleSteps; i++)
        {
            AddScale(low + (high - low) * i / ScaleSteps, logs);
        }

        var most = logs.Max(n => n.Weight);
        var kept = logs.Select(n => n with { Weight = Math.Exp(n.Weight - most) }).Where(n => n.Weight > Negligible).ToArray();
        var sum = kept.Sum(n => n.Weight);
        return Array.ConvertAll(kept, n => n with { Weight = n.Weight / sum });
    }

    // The weights are logarithms here: their spread is beyond what a double holds.
    private void AddScale(double logScale, List<PitNode> logs)
    {
        const double downward = 10, upward = 4.5;
        var scale = Math.Exp(logScale);
        var r = sample.DepthsMetres.Count;
        var all = r + sample.DeeperThanMetres.Count;
        var logSum = LogSum(scale);
        var (low, high) = (Math.Log(r) - downward / Math.Sqrt(r), Math.Log(all) + upward / Math.Sqrt(r));
        // Steps in v are as wide for every α, so the width is no part of the weight.
        var common = (1 - r) * logScale - _sum / scale - r * logSum;
        for (var j = 0; j <= LocationSteps; j++)
        {
            var v = low + (high - low) * j / LocationSteps;
            var w = v - logSum;
            logs.Add(new PitNode(scale, w, common + r * v - Math.Exp(v) + Deeper(w, scale))); // walls (16)
        }
    }

    private double LogSum(double scale) =>
        -_least / scale + Math.Log(
            sample.DepthsMetres.Sum(x => Math.Exp(-(x - _least) / scale))
            + sample.ShallowerThanMetres.Sum(x => Math.Exp(-(x - _least) / scale))); // walls (15)

    // ln(1 - e^-y) loses its digits for small y, where it is ln y.
    private double Deeper(double w, double scale) => sample.DeeperThanMetres.Sum(c =>
    {
        const double small = 1e-8;
        var y = Math.Exp(w - c / scale);
        return y < small ? w - c / scale : Math.Log(-double.ExpM1(-y));
    });
}
