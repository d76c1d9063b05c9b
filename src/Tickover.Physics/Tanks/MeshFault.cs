using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>A fault of a mesh.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Edges">How many edges have it.</param>
/// <param name="Near">Middle of the first of them, in the mesh's unit.</param>
internal sealed record MeshFault(MeshFaultKind Kind, int Edges, SpaceVector Near);
