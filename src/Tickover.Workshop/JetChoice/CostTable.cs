namespace Tickover.Workshop.JetChoice;

/// <summary>Cost of each point over its equivalence ratio, tabulated: a lookup in place of four exponentials.</summary>
internal sealed class CostTable
{
    private const double Leanest = 0.5;                   // equivalence ratio
    private const double Richest = 2;
    private const int Steps = 300;
    private const double PerUnit = Steps / (Richest - Leanest);
    private readonly float[] _costs;

    internal CostTable(JetGround ground)
    {
        _costs = new float[ground.Cells.Count * (Steps + 1)];
        for (var c = 0; c < ground.Cells.Count; c++)
        {
            var p = ground.Cells[c];
            for (var k = 0; k <= Steps; k++)
            {
                var logLambda = -Math.Log(Leanest + k / PerUnit) + ground.Correction[p];
                _costs[c * (Steps + 1) + k] = (float)(ground.Weights[p] * JetRisk.Of(logLambda, ground.Now.Deviation(p), ground.Targets[p]));
            }
        }
    }

    /// <summary>Cost of the sum of two parts of the equivalence ratio over all points.</summary>
    internal double Cost(double[] one, double[] other)
    {
        var cost = 0.0;
        for (var c = 0; c < one.Length; c++)
        {
            var x = Math.Clamp((one[c] + other[c] - Leanest) * PerUnit, 0, Steps - 1e-6);
            var k = (int)x;
            var at = c * (Steps + 1) + k;
            cost += _costs[at] + (x - k) * (_costs[at + 1] - _costs[at]);
        }

        return cost;
    }
}
