namespace Tickover.Physics.Gauges;

/// <summary>What is done to make the needle tell the fuel; the simplest first.</summary>
public enum GaugeCureKind
{
    /// <summary>Nothing.</summary>
    AsItIs,

    /// <summary>A resistor in the wire to the sender.</summary>
    Series,

    /// <summary>A resistor from the sender's terminal to earth.</summary>
    Parallel,

    /// <summary>The float's arm bent.</summary>
    Bend,

    /// <summary>A resistor to earth at the sender and another in the wire.</summary>
    Both,
}
