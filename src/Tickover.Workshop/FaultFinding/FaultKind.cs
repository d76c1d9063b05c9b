namespace Tickover.Workshop.FaultFinding;

/// <summary>What of the car a cause concerns.</summary>
public enum FaultKind
{
    /// <summary>Fuel system, from the cap to the barrel.</summary>
    Fuel,

    /// <summary>Wires, gauge and battery.</summary>
    Electrical,

    /// <summary>Rods, levers, spindles and plates.</summary>
    Linkage,

    /// <summary>Ignition: looks like carburation.</summary>
    Ignition,

    /// <summary>The engine itself and its exhaust: looks like carburation.</summary>
    Engine,

    /// <summary>How it was measured or set.</summary>
    Method,
}
