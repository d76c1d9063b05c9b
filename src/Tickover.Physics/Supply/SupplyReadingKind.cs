namespace Tickover.Physics.Supply;

/// <summary>What a workshop can read off a fuel line.</summary>
public enum SupplyReadingKind
{
    /// <summary>Pressure above the air at the last float valve with the needles shut, Pa.</summary>
    DeadHead = 0,

    /// <summary>Flow into a can from the line opened before the filter, m³/s.</summary>
    FlowBeforeFilter = 1,

    /// <summary>Flow into a can from the line taken off the last float chamber, m³/s.</summary>
    FlowAtChamber = 2,

    /// <summary>Suction below the air at the pump's inlet while it fills the can from the last chamber's line, Pa.</summary>
    Suction = 3,

    /// <summary>Part of the pressure left a minute after the pump stopped, 1.</summary>
    PressureHeld = 4,

    /// <summary>Voltage at the pump while it works, V.</summary>
    PumpVolts = 5,
}
