using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>Corners of a triangle with their heights.</summary>
internal readonly record struct FacetCorners(SpaceVector P0, SpaceVector P1, SpaceVector P2, double H0, double H1, double H2);
