using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>Settings written down before anything is stripped, and the cleaning.</summary>
internal static class StripDownMeasures
{
    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Words, "carburettorNumber", "Number on the carburettor", PlaceKind.Carburettor, AsFoundSettings),
        Row.Of(Quantity.Turns, "mixtureTurns", "Mixture screw, turns out", PlaceKind.Barrel, AsFoundSettings, Bench, IdleMixture).Usually(0.5, 6).Setting().With("Counted in to lightly seated.")
            .Accept("1 to 3 out on coarse patterns, all within half a turn; 4 to 5 on fine threads", Origins.Practice).Apart(0.5, null),
        Row.Of(Quantity.Turns, "bypassTurns", "Air by-pass screw, turns out", PlaceKind.Barrel, AsFoundSettings, Bench, BarrelBalance).Usually(0, 4).Setting().With("Counted in to lightly seated; it only adds air.")
            .Accept("one barrel of each pair ends closed", Origins.Practice),
        Row.Of(Quantity.Turns, "stopTurns", "Stop screw, turns from first touch", PlaceKind.Carburettor, AsFoundSettings, BarrelBalance).Usually(0, 4).Setting(),
        Row.Of(Quantity.Length, "rodLength", "Link rod, between centres", PlaceKind.Carburettor, AsFoundSettings, Linkage).Usually(20, 600).Setting().With("Calliper or rod jig."),
        Row.Of(Quantity.Angle, "leverAngle", "Lever angle at rest", PlaceKind.Carburettor, AsFoundSettings, Linkage).Usually(-90, 90).Setting().With("Angle gauge, from the vertical.")
            .Accept("equal from carburettor to carburettor", Origins.Practice),
        Row.Of(Quantity.Length, "floatDry", "Float height, dry", PlaceKind.Carburettor, AsFoundSettings, Bench).To(2).Usually(2, 60).Setting().With("At valve just closed; do not compress a sprung pin. Say the datum.")
            .Accept("to the maker ±0.25 to 0.5 mm; 0.5 mm is felt", Origins.TradeText).Apart(0.5, null),
        Row.Of(Quantity.Words, "floatDatum", "Datum of the float height", PlaceKind.Carburettor, AsFoundSettings, Bench).Setting().With("Cover face, with or without gasket."),
        Row.Of(Quantity.Words, "cleaningMethod", "Cleaned with", PlaceKind.Carburettor, Cleaning).With("Bath and solution."),
        Row.Of(Quantity.Temperature, "cleaningTemperature", "Bath temperature", PlaceKind.Carburettor, Cleaning).Usually(15, 70).With("Hot or strong baths blacken zinc."),
        Row.Of(Quantity.Duration, "cleaningTime", "Time in the bath", PlaceKind.Carburettor, Cleaning).In("min", 0, "min", 0).Usually(2, 60),
        Row.Choice("passagesProved", "Passages proved", PlaceKind.Barrel, [Cleaning], "all, by flow", "all, by light", "one doubtful", "one blocked").Setting().With("Syringe or fine spray; never a wire through a jet.")
            .Accept("even spray at every progression hole and nozzle, idle drillings clear both ways", Origins.Practice),
    ];
}
