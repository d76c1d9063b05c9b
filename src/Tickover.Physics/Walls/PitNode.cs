namespace Tickover.Physics.Walls;

/// <summary>One pair of Gumbel's figures and its weight.</summary>
/// <param name="ScaleMetres">α, m.</param>
/// <param name="LogSum">λ/α, 1: kept so, for λ alone would lose digits where α is small.</param>
/// <param name="Weight">Its part of all the weight, 1.</param>
internal readonly record struct PitNode(double ScaleMetres, double LogSum, double Weight)
{
    internal double Below(double depth, double patches) => Math.Exp(-patches * Math.Exp(LogSum - depth / ScaleMetres)); // walls (10)

    internal double Depth(double chance, double patches) => ScaleMetres * (LogSum + Math.Log(patches) - Math.Log(-Math.Log(chance))); // walls (10)
}
