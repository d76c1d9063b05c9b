namespace Tickover.Physics.Sending;

/// <summary>A fault of the wire between sender and gauge.</summary>
public enum WireFault
{
    /// <summary>None.</summary>
    None,

    /// <summary>Broken: no current.</summary>
    Open,

    /// <summary>Rubbed through to earth: no resistance.</summary>
    Short,
}
