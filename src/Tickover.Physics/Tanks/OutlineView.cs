namespace Tickover.Physics.Tanks;

/// <summary>From where an outline was sketched; the tank runs straight on along the line of sight.</summary>
public enum OutlineView
{
    /// <summary>From the side: ahead and up.</summary>
    Side,

    /// <summary>From behind: to the left and up.</summary>
    Rear,

    /// <summary>From above: ahead and to the left.</summary>
    Plan,
}
