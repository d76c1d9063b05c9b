using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>Whether the engine is fit to be tuned: clearances, compression, ignition.</summary>
internal static class EngineMeasures
{
    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Length, "inletClearance", "Inlet valve clearance", PlaceKind.Cylinder, EngineCondition, FitToTune).To(2).Usually(0.05, 0.8).Setting().With("Feelers, engine as the maker asks, hot or cold."),
        Row.Of(Quantity.Length, "exhaustClearance", "Exhaust valve clearance", PlaceKind.Cylinder, EngineCondition, FitToTune).To(2).Usually(0.05, 0.8).Setting().With("Feelers, engine as the maker asks, hot or cold."),
        Row.Of(Quantity.Pressure, "compression", "Compression", PlaceKind.Cylinder, EngineCondition, FitToTune).In("bar", 1, "psi", 0).Usually(6, 16).Setting().With("Warm, throttles wide open, all plugs out, coil disabled and leads shielded.")
            .Accept("within about 10 % of each other; one maker accepts the lowest at 75 % of the highest", Origins.TradeText).Apart(null, 0.10),
        Row.Of(Quantity.Percent, "leakDown", "Leak-down", PlaceKind.Cylinder, EngineCondition, FitToTune).Usually(0, 40).Setting().With("At top dead centre on the firing stroke.")
            .Accept("5 to 10 % excellent, to 20 % good, 30 % bad", Origins.TradeText).AtMost(20),
        Row.Of(Quantity.Words, "plug", "Plug", PlaceKind.Car, EngineCondition, FitToTune).Setting().With("Heat range as on the plug."),
        Row.Of(Quantity.Length, "plugGap", "Plug gap", PlaceKind.Car, EngineCondition, FitToTune).To(2).Usually(0.4, 1.1).Setting().With("Wire gauge."),
        Row.Of(Quantity.Resistance, "plugLead", "Plug lead with cap", PlaceKind.Cylinder, EngineCondition, FitToTune).In("kΩ", 1, "kΩ", 1).Usually(0, 30).Setting().With("Multimeter, lead off at both ends; bend it while reading."),
        Row.Of(Quantity.Angle, "dwell", "Dwell", PlaceKind.Bank, EngineCondition, FitToTune, WarmThrough).Usually(20, 70).Setting().Running().With("Dwell meter; degrees of the distributor."),
        Row.Of(Quantity.Angle, "dwellRaised", "Dwell at raised speed", PlaceKind.Bank, WarmThrough).Usually(20, 70).Setting().Running().With("Dwell meter, at the speed at which the advance is read."),
        Row.Of(Quantity.Angle, "staticTiming", "Static timing, before top dead centre", PlaceKind.Bank, EngineCondition, FitToTune).Usually(-10, 20).Setting().With("Lamp or buzzer; after top dead centre is negative.")
            .Accept("banks within 1°", Origins.Practice).Apart(1, null),
        Row.Of(Quantity.Angle, "idleTiming", "Timing at idle, before top dead centre", PlaceKind.Bank, Baseline, EngineCondition, FitToTune, WarmThrough).Usually(-10, 25).Setting().Running().With("Strobe. Moving parts look still in its light.")
            .Accept("banks within 1°", Origins.Practice).Apart(1, null),
        Row.Of(Quantity.Angle, "raisedTiming", "Timing at raised speed, before top dead centre", PlaceKind.Bank, EngineCondition, FitToTune, WarmThrough).Usually(15, 50).Setting().Running().With("Strobe, write the rpm with it.")
            .Accept("banks within 1°", Origins.Practice).Apart(1, null),
        Row.Of(Quantity.Voltage, "chargingVoltage", "Charging voltage", PlaceKind.Car, EngineCondition, FitToTune).Usually(12, 15.5).Setting().Running(),
        Row.Choice("airLeak", "Air leak at base or stub", PlaceKind.Barrel, [EngineCondition, FitToTune, WarmThrough], "none", "base", "stub", "spindle", "take-off").Setting()
            .Accept("no speed change at any joint, spindle, stub or take-off", Origins.TradeText),
        Row.Of(Quantity.Temperature, "oilTemperature", "Oil temperature", PlaceKind.Car, FitToTune, WarmThrough).Usually(20, 130).Running().With("Probe at the dipstick; coolant alone is not enough.")
            .Accept("above 70 °C, or driven 15 min and more", Origins.Practice).AtLeast(70),
        Row.Of(Quantity.Temperature, "coolantTemperature", "Coolant temperature", PlaceKind.Car, FitToTune, WarmThrough).Usually(20, 105).Running(),
        Row.Of(Quantity.Pressure, "smokePressure", "Smoke test pressure", PlaceKind.Car, WarmThrough).Usually(0.03, 0.14).With("Engine off.")
            .Accept("1.0 to 1.5 psi is typical for a general smoke machine", Origins.TradeText).AtMost(0.104),
        Row.Of(Quantity.EngineSpeed, "speedChangeAtLeak", "Speed change at the joint tested", PlaceKind.Barrel, WarmThrough).Usually(-300, 600).Setting().Running().With("Solvent spray only as a last resort, nothing hot or sparking near.")
            .Accept("none", Origins.Practice),
        Row.Of(Quantity.Words, "blanked", "Take-offs blanked or connected", PlaceKind.Car, WarmThrough).Setting().With("Servo, breather, vacuum advance: what state, each."),
    ];
}
