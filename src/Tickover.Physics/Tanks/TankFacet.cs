using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>A flat three-cornered piece of a tank's wall, its corners anticlockwise seen from outside.</summary>
/// <param name="A">One corner, m.</param>
/// <param name="B">The next, m.</param>
/// <param name="C">The third, m.</param>
/// <param name="Share">1 for wall that is there; -1 for the mouth of a cut-out in another facet, where wall is missing.</param>
public readonly record struct TankFacet(SpaceVector A, SpaceVector B, SpaceVector C, int Share = 1)
{
    /// <summary>Twice its area as a vector that points out of the tank, m².</summary>
    public SpaceVector Normal => (B - A).Cross(C - A);

    /// <summary>Its area, m².</summary>
    public double Area => Normal.Length / 2;

    /// <summary>The same piece seen from the other side.</summary>
    /// <returns>The turned facet.</returns>
    public TankFacet Turned() => new(A, C, B, Share);

    /// <summary>The same piece elsewhere.</summary>
    /// <param name="way">How far it moves, m.</param>
    /// <returns>The moved facet.</returns>
    public TankFacet Moved(SpaceVector way) => new(A + way, B + way, C + way, Share);
}
