using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>A flat face of a body, its corners anticlockwise from outside.</summary>
/// <param name="Corners">Three or more.</param>
/// <param name="OnWall">Whether it lies in the wall of the tank it is cut out of.</param>
internal sealed record ConvexFace(IReadOnlyList<SpaceVector> Corners, bool OnWall)
{
    public IEnumerable<TankFacet> Facets(int share)
    {
        for (var i = 1; i + 1 < Corners.Count; i++)
        {
            yield return new TankFacet(Corners[0], Corners[i], Corners[i + 1], share);
        }
    }
}
