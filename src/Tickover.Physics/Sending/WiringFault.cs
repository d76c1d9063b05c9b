namespace Tickover.Physics.Sending;

/// <summary>What is broken between sender and gauge.</summary>
public enum WiringFault
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The wire or the earth is off: no current.</summary>
    Open = 1,

    /// <summary>The wire touches the body: the gauge sees no resistance.</summary>
    Short = 2,
}
