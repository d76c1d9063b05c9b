namespace Tickover.Physics.Inspection;

/// <summary>A float of straight upright sides, such as a pair of plastic blocks.</summary>
/// <param name="AreaSquareMetres">Area in the fuel's surface, all bodies together, m²; above zero.</param>
/// <param name="TallMetres">Height, m; above zero.</param>
public sealed record StraightFloat(double AreaSquareMetres, double TallMetres) : FloatShape
{
    /// <inheritdoc/>
    public override double HeightMetres => TallMetres;

    /// <inheritdoc/>
    public override double Immersed(double depthMetres) => AreaSquareMetres * Math.Clamp(depthMetres, 0, TallMetres);
}
