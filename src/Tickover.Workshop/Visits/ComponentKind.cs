namespace Tickover.Workshop.Visits;

/// <summary>Parts that are followed over the years.</summary>
public enum ComponentKind
{
    /// <summary>The engine.</summary>
    Engine,

    /// <summary>A carburettor.</summary>
    Carburettor,

    /// <summary>A fuel tank.</summary>
    Tank,

    /// <summary>The unit in a tank that reports the level.</summary>
    Sender,

    /// <summary>The fuel gauge.</summary>
    Gauge,

    /// <summary>A fuel pump.</summary>
    Pump,

    /// <summary>A fuel filter.</summary>
    Filter,

    /// <summary>The distributor or what stands in for it.</summary>
    Distributor,

    /// <summary>Anything else with a number.</summary>
    Other,
}
