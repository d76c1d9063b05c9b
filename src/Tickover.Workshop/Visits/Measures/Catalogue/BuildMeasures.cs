using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>Set on the bench, refitted, the linkage set.</summary>
internal static class BuildMeasures
{
    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Length, "floatDrop", "Float drop", PlaceKind.Carburettor, Bench).To(2).Usually(3, 60).Setting(),
        Row.Of(Quantity.Length, "floatWet", "Fuel level, wet", PlaceKind.Carburettor, Bench).Usually(3, 60).Setting().With("Sight tube, the real fuel at the real pressure, in the open; below the datum.")
            .Accept("equal across all carburettors within 0.5 mm", Origins.Practice).Apart(0.5, null),
        Row.Of(Quantity.Volume, "pumpShot", "Pump shot, 10 strokes", PlaceKind.Barrel, Bench).In("cm³", 1, "cm³", 1).Usually(1, 25).Setting().With("Measuring cylinder, full strokes.")
            .Accept("within 10 % between barrels", Origins.Practice).Apart(null, 0.10),
        Row.Of(Quantity.Length, "plateGap", "Plate gap at rest", PlaceKind.Barrel, Bench).To(2).Usually(0, 1).Setting().With("Feeler or fine wire, or a light box.").Accept("both plates crack at the same instant", Origins.Practice),
        Row.Of(Quantity.Words, "damperOil", "Damper oil: grade and level", PlaceKind.Carburettor, Bench, FitToTune).Setting().With("Constant-depression carburettors."),
        Row.Of(Quantity.Torque, "baseTorque", "Base nuts", PlaceKind.Carburettor, Linkage, NextMorning, FollowUp).Usually(5, 30).Setting().With("Torque wrench, cold, evenly."),
        Row.Of(Quantity.Length, "couplingClearance", "Coupling clearance", PlaceKind.Carburettor, Linkage, BarrelBalance).To(2).Usually(0, 1).Setting().With("Feelers at the fork.")
            .Accept("0.15 mm at the fork of two constant-depression carburettors; the maker's figure first", Origins.TradeText),
        Row.Of(Quantity.Angle, "fullThrottleAngle", "Plate off its axis at full pedal", PlaceKind.Barrel, Linkage, BarrelBalance).Usually(0, 20).Setting().With("Engine off, eye down each barrel, protractor on a lever.")
            .Accept("parallel to the axis within 2°", Origins.Practice).AtMost(2),
        Row.Of(Quantity.Length, "linkageClearance", "Least clearance of the linkage", PlaceKind.Car, Linkage).Usually(0, 50).Setting().With("Through the whole travel, engine rocked.").Accept("5 mm", Origins.TradeText).AtLeast(5),
        Row.Of(Quantity.Count, "snapShut", "Snapped shut, out of ten", PlaceKind.Car, Linkage, RoadTest).Usually(0, 10).Setting().With("From any opening. A jammed throttle is a risk to life: sign it off.")
            .Accept("ten times out of ten", Origins.Practice).AtLeast(10),
        Row.Of(Quantity.Force, "springPull", "Pull of the return spring", PlaceKind.Carburettor, Linkage).Usually(1, 60).Setting().With("Spring balance."),
        Row.Of(Quantity.Words, "springHooks", "Spring hooks and pedal stop", PlaceKind.Car, Linkage).Setting().With("Which holes; the stop takes the load before the carburettor."),
    ];
}
