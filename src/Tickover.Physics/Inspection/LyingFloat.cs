using Tickover.Physics.Flow;

namespace Tickover.Physics.Inspection;

/// <summary>A float of round bodies that lie on their sides, such as a pair of brass drums.</summary>
/// <param name="DiameterMetres">Diameter of a body, m; above zero.</param>
/// <param name="LengthMetres">Length of all bodies together, m; above zero.</param>
public sealed record LyingFloat(double DiameterMetres, double LengthMetres) : FloatShape
{
    /// <inheritdoc/>
    public override double HeightMetres => DiameterMetres;

    /// <inheritdoc/>
    public override double Immersed(double depthMetres) => LengthMetres * Circle.SegmentArea(DiameterMetres, depthMetres); // flow (14)
}
