namespace Tickover.Physics.Walls;

/// <summary>Gumbel's distribution of the deepest pit of a patch. docs/physics/walls.md (8) to (11).</summary>
/// <remarks><c>default</c> has no scale and is no distribution; make one with a scale above zero.</remarks>
/// <param name="LocationMetres">λ, the commonest deepest pit, m.</param>
/// <param name="ScaleMetres">α, m; above zero.</param>
public readonly record struct Gumbel(double LocationMetres, double ScaleMetres)
{
    /// <summary>Chance that the deepest pit of a patch is no deeper than this.</summary>
    /// <param name="depthMetres">Depth, m.</param>
    /// <returns>0 to 1.</returns>
    public double Below(double depthMetres) => Below(depthMetres, 1); // walls (8)

    /// <summary>Chance that the deepest pit of many patches is no deeper than this.</summary>
    /// <param name="depthMetres">Depth, m.</param>
    /// <param name="patches">T, how many patches; above zero, need not be whole.</param>
    /// <returns>0 to 1.</returns>
    public double Below(double depthMetres, double patches) =>
        Math.Exp(-Precondition.Positive(patches) * Math.Exp(-(depthMetres - LocationMetres) / ScaleMetres)); // walls (10)

    /// <summary>Depth that the deepest pit of many patches stays under with a chance.</summary>
    /// <param name="chance">Above 0, below 1.</param>
    /// <param name="patches">T, how many patches.</param>
    /// <returns>m.</returns>
    public double Depth(double chance, double patches) =>
        CommonestDepth(patches) - ScaleMetres * Math.Log(-Math.Log(Precondition.Within(chance, double.Epsilon, 1 - 1e-16))); // walls (10)

    /// <summary>The commonest deepest pit of many patches: the return level.</summary>
    /// <param name="patches">T, how many patches.</param>
    /// <returns>m.</returns>
    public double CommonestDepth(double patches) => LocationMetres + ScaleMetres * Math.Log(Precondition.Positive(patches)); // walls (9)

    /// <summary>Logarithm of the likelihood of depths, for metres.</summary>
    /// <param name="depthsMetres">Deepest pits of patches, m.</param>
    /// <returns>1.</returns>
    public double LogLikelihood(IReadOnlyList<double> depthsMetres)
    {
        ArgumentNullException.ThrowIfNull(depthsMetres);
        var (location, scale) = (LocationMetres, ScaleMetres);
        return depthsMetres.Sum(x => -Math.Log(scale) - (x - location) / scale - Math.Exp(-(x - location) / scale)); // walls (11)
    }
}
