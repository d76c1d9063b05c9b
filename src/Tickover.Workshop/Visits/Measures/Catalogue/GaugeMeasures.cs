using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>Where the fuel is, what the sender reports, what the needle shows.</summary>
internal static class GaugeMeasures
{
    private const string ArmHint = "Disconnected, battery isolated, tank closed; watch for jumps while the arm moves.";

    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Length, "dip", "Dip", PlaceKind.Tank, LinkedTanks, Strapping, NextMorning).To(0).Usually(0, 600).With("Dip stick, car level."),
        Row.Of(Quantity.Angle, "floorSlope", "Slope of the floor", PlaceKind.Car, LinkedTanks, Strapping).To(1).Usually(0, 3).With("Inclinometer, across the car."),
        Row.Of(Quantity.Length, "levelDifference", "Difference of level between the tanks", PlaceKind.Car, LinkedTanks).To(0).Usually(0, 300).Setting().With("Clear sight tube, after settling.")
            .Accept("within 10 mm in the settling time", Origins.Practice).AtMost(10),
        Row.Of(Quantity.Duration, "settlingTime", "Time to level", PlaceKind.Car, LinkedTanks).In("min", 0, "min", 0).Usually(1, 60).Setting().With("From filling one side until the levels stand within 5 mm.")
            .Accept("some 12 min for a cross-pipe of 10 mm bore, 38 min for 6 mm", Origins.Derived),
        Row.Of(Quantity.Length, "crossPipeBore", "Cross-pipe bore", PlaceKind.Car, LinkedTanks).Usually(5, 25),
        Row.Choice("crossPipe", "Cross-pipe", PlaceKind.Car, [LinkedTanks], "clear", "partly blocked", "blocked", "none fitted").Setting(),
        Row.Choice("vent", "Vent", PlaceKind.Tank, [LinkedTanks], "clear", "partly blocked", "blocked").Setting().Accept("both tanks vented alike", Origins.Practice),
        Row.Of(Quantity.Resistance, "senderEmpty", "Sender at empty", PlaceKind.Tank, SenderAndNeedle).Usually(0, 300).Setting().With(ArmHint),
        Row.Of(Quantity.Resistance, "senderQuarter", "Sender at a quarter", PlaceKind.Tank, SenderAndNeedle).Usually(0, 300).Setting().With(ArmHint),
        Row.Of(Quantity.Resistance, "senderHalf", "Sender at half", PlaceKind.Tank, SenderAndNeedle).Usually(0, 300).Setting().With(ArmHint),
        Row.Of(Quantity.Resistance, "senderThreeQuarters", "Sender at three quarters", PlaceKind.Tank, SenderAndNeedle).Usually(0, 300).Setting().With(ArmHint),
        Row.Of(Quantity.Resistance, "senderFull", "Sender at full", PlaceKind.Tank, SenderAndNeedle).Usually(0, 300).Setting().With(ArmHint),
        Row.Choice("senderSweep", "Sender sweep", PlaceKind.Tank, [SenderAndNeedle], "smooth", "jumps", "open somewhere", "float full of fuel", "arm fouls").Setting().With(ArmHint),
        Row.Choice("senderWiring", "Senders wired", PlaceKind.Car, [SenderAndNeedle], "one sender", "series", "parallel", "changeover switch").Setting(),
        Row.Of(Quantity.Resistance, "senderEarth", "Earth from sender to body", PlaceKind.Tank, SenderAndNeedle).Usually(0, 2).Setting().With("Check first: most wrong gauges are sender or earth."),
        Row.Of(Quantity.Voltage, "gaugeSupply", "Supply at the gauge", PlaceKind.Car, SenderAndNeedle).Usually(9, 15).Setting().With("Thermal gauges want a mean of about 10 V."),
        Row.Of(Quantity.GaugeScale, "needleAtEmpty", "Needle with the empty resistance fed in", PlaceKind.Car, SenderAndNeedle).Usually(0, 1).Setting().With("Resistance box in place of the sender; a thermal gauge takes a minute."),
        Row.Of(Quantity.GaugeScale, "needleAtHalf", "Needle with the half resistance fed in", PlaceKind.Car, SenderAndNeedle).Usually(0, 1).Setting().With("Resistance box in place of the sender."),
        Row.Of(Quantity.GaugeScale, "needleAtFull", "Needle with the full resistance fed in", PlaceKind.Car, SenderAndNeedle).Usually(0, 1).Setting().With("Resistance box in place of the sender.")
            .Accept("within 1/16 of the scale at F", Origins.Practice).AtLeast(1 - (1.0 / 16)),
        Row.Of(Quantity.Volume, "strappingLitres", "Filled so far", PlaceKind.Tank, Strapping).Usually(0, 150).With("Calibrated can, steps of 5 L; let the levels settle before each reading."),
        Row.Of(Quantity.Resistance, "strappingResistance", "Sender at this filling", PlaceKind.Tank, Strapping).Usually(0, 300),
        Row.Of(Quantity.GaugeScale, "strappingNeedle", "Needle at this filling", PlaceKind.Car, Strapping).Usually(0, 1),
        Row.Of(Quantity.Volume, "litresAtEmptyMark", "Usable fuel left at E", PlaceKind.Car, Strapping).Usually(0, 30).Setting().Accept("shows E with 5 to 8 L of usable fuel left", Origins.Practice).AtLeast(5).AtMost(8),
        Row.Of(Quantity.Volume, "usableVolume", "Usable volume", PlaceKind.Tank, Strapping).Usually(5, 150).Setting().With("What the pick-up can reach."),
        Row.Of(Quantity.Volume, "reserve", "Reserve", PlaceKind.Car, Strapping).Usually(0, 20).Setting().With("Fuel below the E mark or the reserve tap's level."),
    ];
}
