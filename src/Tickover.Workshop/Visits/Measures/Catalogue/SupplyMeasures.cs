using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>Pipes, hoses, filters and the pump.</summary>
internal static class SupplyMeasures
{
    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Words, "hoseFitted", "Hose fitted: standard and date", PlaceKind.Run, HosesAndFilters).Setting().With("As printed on the new hose; the date it went on."),
        Row.Of(Quantity.Length, "hoseLength", "Length of hose", PlaceKind.Run, HosesAndFilters).In("m", 2, "ft", 1).Usually(0.05, 8),
        Row.Of(Quantity.Length, "hoseBore", "Bore of hose", PlaceKind.Run, HosesAndFilters).Usually(4, 60),
        Row.Of(Quantity.Length, "clipSpacing", "Widest gap between pipe clips", PlaceKind.Run, HosesAndFilters).To(0).Usually(50, 1000).Setting().Accept("at most 300 mm", Origins.Practice).AtMost(300),
        Row.Of(Quantity.Words, "filter", "Filter: kind and date", PlaceKind.Run, HosesAndFilters).Setting().With("One ahead of an electric pump, a fine one before the carburettors; look at the arrow."),
        Row.Choice("filterFound", "Filter holds", PlaceKind.Run, [HosesAndFilters, FollowUp], "nothing", "specks", "rust", "water", "lining").Setting(),
        Row.Of(Quantity.Pressure, "fuelPressure", "Fuel pressure, no flow", PlaceKind.Car, Pump, FirstStart).Usually(0.05, 0.6).Setting().With("Gauge 0 to 0.7 bar at the last carburettor, pump at working voltage.")
            .Accept("0.17 to 0.24 bar (2.5 to 3.5 psi) for twin-barrel carburettors with brass floats; the maker's figure first", Origins.Practice).AtLeast(0.172).AtMost(0.242),
        Row.Of(Quantity.Pressure, "fuelPressureRunning", "Fuel pressure, engine running", PlaceKind.Car, FirstStart).Usually(0.05, 0.6).Setting().Running().With("Gauge left teed in."),
        Row.Of(Quantity.VolumeFlow, "fuelFlow", "Free flow at the last carburettor", PlaceKind.Car, Pump).In("L/h", 0, "gal/h", 1).Usually(15, 250).Setting().With("Calibrated can, closed and bonded, engine cool, second person. cm³/min is read too.")
            .Accept("at least twice the full-power need, which in L/h is about bhp × 0.32", Origins.Practice),
        Row.Of(Quantity.Voltage, "pumpVoltage", "Voltage at the pump", PlaceKind.Car, Pump).Usually(5.5, 15).Setting().With("While it runs; mind the polarity."),
        Row.Of(Quantity.Depression, "suction", "Suction side depression", PlaceKind.Car, Pump).Usually(0, 60).Setting().With("Vacuum gauge before the pump."),
        Row.Of(Quantity.Duration, "pressureHeld", "Pressure held after stopping", PlaceKind.Car, Pump).In("min", 0, "min", 0).Usually(0, 60).Setting()
            .Accept("several minutes, else the pump's valves leak", Origins.TradeText),
        Row.Of(Quantity.Pressure, "pressureDecay", "Pressure lost in 5 min", PlaceKind.Car, Pump).Usually(0, 0.4).Setting(),
        Row.Choice("pumpCutOff", "Pump cut-off", PlaceKind.Car, [Pump, HandedBack], "stops the pump", "does not stop it", "none fitted").Setting()
            .Accept("a pump should stop when the engine stops", Origins.TradeText),
    ];
}
