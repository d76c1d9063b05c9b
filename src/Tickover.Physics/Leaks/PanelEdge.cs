namespace Tickover.Physics.Leaks;

/// <summary>How the edges of a flat panel are held.</summary>
public enum PanelEdge
{
    /// <summary>Held against turning, as by a stiff seam.</summary>
    Clamped,

    /// <summary>Free to turn, as at a soft fold.</summary>
    Supported,
}
