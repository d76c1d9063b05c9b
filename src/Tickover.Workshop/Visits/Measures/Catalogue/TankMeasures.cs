using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>Fuel drawn and tanks looked into, tested, decided.</summary>
internal static class TankMeasures
{
    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Volume, "drained", "Fuel drained", PlaceKind.Tank, FuelSample).Usually(0, 100).With("Closed retriever, bonded, never over a pit."),
        Row.Choice("fuelAppearance", "Sample looks", PlaceKind.Tank, [FuelSample], "clear and bright", "hazy", "water at the bottom", "rust or dirt", "dark").With("Clear jar, settled 10 min.")
            .Accept("clear and bright, no free water", Origins.Practice),
        Row.Choice("fuelSmell", "Sample smells of", PlaceKind.Tank, [FuelSample], "petrol", "varnish", "turpentine").Accept("no varnish or turpentine", Origins.Practice),
        Row.Of(Quantity.Volume, "freeWater", "Free water in the sample", PlaceKind.Tank, FuelSample).In("mL", 0, "fl oz", 1).Usually(0, 500).Accept("none", Origins.Practice).AtMost(0),
        Row.Of(Quantity.Percent, "ethanol", "Ethanol", PlaceKind.Tank, FuelSample).Usually(0, 15).With("Shake with a measured volume of water; the water layer grows by about the ethanol."),
        Row.Of(Quantity.Temperature, "fuelTemperature", "Fuel temperature", PlaceKind.Tank, FuelSample).Usually(-5, 40),
        Row.Of(Quantity.Duration, "fuelAge", "Age of the fuel", PlaceKind.Tank, FuelSample).In("months", 0, "months", 0).Usually(0, 240).Accept("spoils in three to six months", Origins.TradeText),
        Row.Of(Quantity.Words, "fuelWentTo", "Where the fuel went", PlaceKind.Tank, FuelSample).With("Carrier and note."),
        Row.Of(Quantity.Volume, "tankVolume", "Tank volume, brim full", PlaceKind.Tank, TankWork).Usually(5, 150),
        Row.Of(Quantity.Mass, "tankMass", "Tank, weighed empty and dry", PlaceKind.Tank, TankWork).In("kg", 2, "lb", 2).Usually(1, 30).Setting(),
        Row.Choice("tankInside", "Inside of the tank", PlaceKind.Tank, [TankWork], "clean", "light rust", "scale", "pitted", "old lining, sound", "old lining, flaking").Setting().With("Borescope: seams, sump, baffles, pick-up.")
            .Accept("no flake on a white cloth", Origins.Practice),
        Row.Of(Quantity.Length, "tankWall", "Tank wall", PlaceKind.Tank, TankWork).Usually(0.3, 2).With("Thickness gauge; it misses deep narrow pits."),
        Row.Of(Quantity.Length, "pitDepth", "Deepest pit", PlaceKind.Tank, TankWork).Usually(0, 1.5),
        Row.Choice("tankTest", "Leak test", PlaceKind.Tank, [TankWork], "water and dye", "air under water", "air and soap").With("Safest first. Never a shop air line direct."),
        Row.Of(Quantity.Pressure, "tankTestPressure", "Test pressure", PlaceKind.Tank, TankWork).In("mbar", 0, "psi", 1).Usually(0, 150).With("Regulated supply with relief valve or water column, vents blanked.")
            .Accept("70 to 140 mbar for thin old steel", Origins.Practice).AtMost(140),
        Row.Of(Quantity.Duration, "tankTestTime", "Test time", PlaceKind.Tank, TankWork).In("min", 0, "min", 0).Usually(5, 1500).Accept("15 min under pressure, 24 h with water and dye", Origins.Practice).AtLeast(15),
        Row.Of(Quantity.Pressure, "tankPressureLoss", "Pressure lost", PlaceKind.Tank, TankWork).In("mbar", 0, "psi", 2).Usually(0, 140).Setting().With("At constant temperature.")
            .Accept("none in 15 min", Origins.Practice).AtMost(0),
        Row.Choice("tankDecision", "Decision", PlaceKind.Tank, [TankWork], "keep", "line", "repair by specialist", "replace").With("No hot work in this workshop."),
    ];
}
