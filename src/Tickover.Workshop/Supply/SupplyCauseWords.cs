using Tickover.Physics.Supply;
using static Tickover.Workshop.Mixture.WorkingNumber;

namespace Tickover.Workshop.Supply;

/// <summary>Causes, readings and looks of a fuel supply in words.</summary>
public static class SupplyCauseWords
{
    /// <summary>A cause.</summary>
    /// <param name="kind">The cause.</param>
    /// <returns>A few words.</returns>
    public static string Cause(SupplyFaultKind kind) => kind switch
    {
        SupplyFaultKind.None => "Nothing wrong that these readings show",
        SupplyFaultKind.FilterLoaded => "Filter loaded",
        SupplyFaultKind.SuctionRestricted => "Way to the pump narrowed: gauze, kink, a hose closed inside",
        SupplyFaultKind.DeliveryRestricted => "Way from pump to filter narrowed",
        SupplyFaultKind.AirLeak => "Air drawn in before the pump",
        SupplyFaultKind.PumpWorn => "Pump worn: diaphragm, spring, lever",
        SupplyFaultKind.PumpValvesLeak => "Pump's valves leak back",
        SupplyFaultKind.FloatValveLeaks => "A float valve does not shut",
        SupplyFaultKind.VentStopped => "Tank vent stopped",
        SupplyFaultKind.LowVoltage => "Too little voltage at the pump",
        SupplyFaultKind.RegulatorLow => "Regulator holds too little",
        _ => "Return restrictor lost or too wide",
    };

    /// <summary>What to look at next.</summary>
    /// <param name="check">The look.</param>
    /// <returns>A sentence.</returns>
    public static string Check(SupplyCheckKind check) => check switch
    {
        SupplyCheckKind.ReadDeadHead => "Read the pressure at the last float valve with the needles shut.",
        SupplyCheckKind.ReadFlowBeforeFilter => "Open the line before the filter and time a measured flow into a closed, bonded can.",
        SupplyCheckKind.ReadFlowAtChamber => "Take the line off the last float chamber and time a measured flow into a closed, bonded can.",
        SupplyCheckKind.ReadSuction => "Tee a vacuum gauge in at the pump's inlet and read it while the last line fills the can.",
        SupplyCheckKind.ReadPressureHeld => "Watch the gauge for a minute after the pump stops, and note what part of the pressure is left.",
        SupplyCheckKind.ReadPumpVolts => "Read the voltage at the pump's own terminals while it works, earth included.",
        SupplyCheckKind.OpenFillerCap => "Time the flow again with the filler cap off. If it recovers, the vent is stopped.",
        SupplyCheckKind.LookForBubbles => "Put a short clear hose behind the pump and look for bubbles. Bubbles mean a joint before the pump draws air, though it may not weep.",
        SupplyCheckKind.ShutBehindPump => "Stop the pump and clamp the hose behind it. If the gauge on the carburettors' side now holds, the pump leaks back; if it still sinks, a float valve does.",
        SupplyCheckKind.ShutReturn => "Clamp the return hose. If the pressure rises to what it should be, the return takes too much.",
        _ => "Feed the pump from a can on a short wide hose. If the flow recovers, the trouble lies between tank and pump.",
    };

    /// <summary>A reading's name.</summary>
    /// <param name="kind">The reading.</param>
    /// <returns>A few words.</returns>
    public static string Reading(SupplyReadingKind kind) => kind switch
    {
        SupplyReadingKind.DeadHead => "Pressure, needles shut",
        SupplyReadingKind.FlowBeforeFilter => "Flow before the filter",
        SupplyReadingKind.FlowAtChamber => "Flow at the last chamber",
        SupplyReadingKind.Suction => "Suction at the pump",
        SupplyReadingKind.PressureHeld => "Pressure left after a minute",
        _ => "Voltage at the pump",
    };

    /// <summary>A reading's value.</summary>
    /// <param name="unit">The document's pressure unit.</param>
    /// <param name="kind">The reading.</param>
    /// <param name="value">In SI.</param>
    /// <returns>Value and unit.</returns>
    public static string Value(PressureUnit unit, SupplyReadingKind kind, double value) => kind switch
    {
        SupplyReadingKind.DeadHead or SupplyReadingKind.Suction => SupplyWords.Pressure(unit, value),
        SupplyReadingKind.FlowBeforeFilter or SupplyReadingKind.FlowAtChamber => SupplyWords.LitresMinute(value),
        SupplyReadingKind.PressureHeld => Percent(value),
        _ => Fixed(value, 1) + "\u2009V",
    };

    /// <summary>A probability, no sharper than it is known.</summary>
    /// <param name="probability">1.</param>
    /// <returns>Such as "about 7 in 10".</returns>
    public static string Likelihood(double probability) => probability switch
    {
        >= 0.95 => "almost certain",
        < 0.05 => "unlikely",
        _ => $"about {Fixed(Math.Clamp(10 * probability, 1, 9), 0)} in 10",
    };

    /// <summary>What a diagnosis comes to.</summary>
    /// <param name="diagnosis">The diagnosis.</param>
    /// <returns>One or two sentences.</returns>
    public static string Said(SupplyDiagnosis diagnosis)
    {
        ArgumentNullException.ThrowIfNull(diagnosis);
        const double unexplained = 3;
        var first = diagnosis.Causes[0];
        return diagnosis.Misfit > unexplained
            ? $"No single cause listed explains these readings; nearest: {Cause(first.Kind)}. Read them again, and look for two faults at once."
            : $"{Cause(first.Kind)}: {Likelihood(first.Probability)}.";
    }
}
