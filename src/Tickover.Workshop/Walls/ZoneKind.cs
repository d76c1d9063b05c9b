namespace Tickover.Workshop.Walls;

/// <summary>Parts of a wall that rot each in its own way.</summary>
public enum ZoneKind
{
    /// <summary>Not under a pad.</summary>
    Open,

    /// <summary>Under a pad or a strap, where water stays.</summary>
    Pad,
}
