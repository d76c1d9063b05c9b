using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls;

/// <summary>A metal that touches a wall, at once or through a wet pad.</summary>
/// <param name="Where">What it is, such as "strap" or "outlet union".</param>
/// <param name="Metal">Its metal.</param>
/// <param name="ContactSquareCentimetres">Its wet area, cm²; null where it is not known.</param>
/// <param name="BareSquareCentimetres">Wet area of bare wall beside it, cm²; null where it is not known.</param>
public sealed record WallContact(string Where, Metal Metal, double? ContactSquareCentimetres, double? BareSquareCentimetres);
