using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>Integrals over wetted wall, each weighted by how far the wall faces up; all add up. docs/physics/tanks.md (5).</summary>
internal struct WetMoments
{
    private const double Third = 1.0 / 3;
    private const double Sixth = 1.0 / 6;
    private const double Twelfth = 1.0 / 12;

    public double Wetted;        // ∫ dS, not weighted
    public double Flat;          // ∫ m dS
    public double Height;        // ∫ m h dS
    public double HeightSquared; // ∫ m h² dS
    public SpaceVector Place;       // ∫ m x dS
    public SpaceVector PlaceHeight; // ∫ m x h dS

    /// <summary>Adds a triangle, or takes it away with a negative weight.</summary>
    public void Add(double area, double facing, double share, in FacetCorners at)
    {
        var weighted = area * facing;
        var heights = at.H0 + at.H1 + at.H2;
        var places = at.P0 + at.P1 + at.P2;
        Wetted += area * share;
        Flat += weighted;
        Height += weighted * heights * Third;
        HeightSquared += weighted * Sixth * (at.H0 * at.H0 + at.H1 * at.H1 + at.H2 * at.H2 + at.H0 * at.H1 + at.H1 * at.H2 + at.H2 * at.H0);
        Place += weighted * Third * places;
        PlaceHeight += weighted * Twelfth * (heights * places + (at.H0 * at.P0 + at.H1 * at.P1 + at.H2 * at.P2)); // tanks (5)
    }
}
