namespace Tickover.Physics.Tanks;

/// <summary>What keeps triangles from being one closed surface.</summary>
internal enum MeshFaultKind
{
    /// <summary>An edge has one face only.</summary>
    Open,

    /// <summary>Two faces run through their edge the same way: one is turned.</summary>
    Turned,

    /// <summary>Three faces or more share an edge.</summary>
    Crowded,
}
