using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>A plane: places x with n·x = d; n points out and has length one.</summary>
internal readonly record struct Facing(SpaceVector Normal, double Distance)
{
    public static Facing? Of(in TankFacet facet)
    {
        var normal = facet.Normal;
        if (normal.Length <= 0)
        {
            return null;
        }

        var unit = normal.ToUnit();
        return new Facing(unit, unit.Dot(facet.A));
    }

    /// <summary>How far a place lies beyond, m.</summary>
    public double Beyond(SpaceVector place) => Normal.Dot(place) - Distance;
}
