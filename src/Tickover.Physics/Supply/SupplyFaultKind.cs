namespace Tickover.Physics.Supply;

/// <summary>What can be wrong with a fuel line.</summary>
public enum SupplyFaultKind
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The filter before the carburettors is loaded.</summary>
    FilterLoaded = 1,

    /// <summary>Something narrows the way from the tank to the pump: gauze, kink, a hose collapsed inside.</summary>
    SuctionRestricted = 2,

    /// <summary>Something narrows the way from the pump to the filter.</summary>
    DeliveryRestricted = 3,

    /// <summary>Air comes in before the pump.</summary>
    AirLeak = 4,

    /// <summary>The pump is worn: diaphragm, spring, lever.</summary>
    PumpWorn = 5,

    /// <summary>The pump's valves leak back.</summary>
    PumpValvesLeak = 6,

    /// <summary>A float valve does not shut.</summary>
    FloatValveLeaks = 7,

    /// <summary>The tank's vent is stopped.</summary>
    VentStopped = 8,

    /// <summary>An electric pump is short of voltage.</summary>
    LowVoltage = 9,

    /// <summary>The regulator holds too little.</summary>
    RegulatorLow = 10,

    /// <summary>The restrictor of the return is lost or too wide.</summary>
    ReturnWide = 11,
}
