using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>Wear of spindles, plates, flanges, floats and valves.</summary>
internal static class WearMeasures
{
    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Length, "spindleClearance", "Spindle clearance, radial", PlaceKind.Barrel, Wear).To(2).Usually(0, 0.5).Setting().With("Dial gauge at the spindle end, top and bottom of travel; the larger.")
            .Accept("0.05 mm good, 0.10 mm usable, above 0.15 mm re-bush", Origins.Practice).AtMost(0.10),
        Row.Of(Quantity.Angle, "spindleTwist", "Spindle twist between the plates", PlaceKind.Carburettor, Wear).To(1).Usually(0, 5).Setting().With("Both plates against the light."),
        Row.Of(Quantity.Length, "spindleBend", "Spindle out of true", PlaceKind.Carburettor, Wear).To(2).Usually(0, 0.5).Setting().With("Dial gauge, on vee blocks."),
        Row.Choice("plateSeating", "Plate against the light", PlaceKind.Barrel, [Wear], "shut", "hair of light", "open at one side", "wrong way round").Setting()
            .Accept("both shut together with no more than a hair of light", Origins.Practice),
        Row.Of(Quantity.Angle, "plateAngle", "Plate angle, stamped or measured", PlaceKind.Barrel, Wear).To(1).Usually(0, 20).With("Look at the chamfer's direction too."),
        Row.Of(Quantity.Length, "flangeGap", "Flange out of flat", PlaceKind.Carburettor, Wear).To(2).Usually(0, 0.5).Setting().With("Straight-edge and feelers.").Accept("at most 0.05 mm", Origins.Practice).AtMost(0.05),
        Row.Of(Quantity.Mass, "floatMass", "Float", PlaceKind.Carburettor, Wear).Usually(4, 80).Setting().With("Gram scales, dry.").Accept("equal within 0.5 g", Origins.Practice).Apart(0.5, null),
        Row.Choice("floatLeak", "Float in warm water", PlaceKind.Carburettor, [Wear], "no bubbles", "bubbles").Setting().With("Warm water, never a flame."),
        Row.Of(Quantity.Duration, "needleHolds", "Needle valve holds", PlaceKind.Carburettor, Wear).Usually(0, 120).Setting().With("Hand vacuum pump.").Accept("15 s", Origins.Practice).AtLeast(15),
        Row.Of(Quantity.Duration, "pistonDrop", "Piston drop, damper out", PlaceKind.Carburettor, Wear).To(1).Usually(1, 20).Setting().With("Constant-depression carburettors; stopwatch.")
            .Accept("equal within a second or so", Origins.Practice).Apart(1, null),
        Row.Choice("wearVerdict", "Verdict", PlaceKind.Barrel, [Wear], "good", "usable", "re-bush", "replace").Setting(),
    ];
}
