using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>Chokes, jets and tubes by barrel: what is stamped and what is measured.</summary>
internal static class JetMeasures
{
    private const string Stamped = "As stamped, in 1/100 mm. A number in cm³/min is a flow and stands under jet flow.";
    private const string Alike = "all barrels alike, unless a measured reason stands beside the odd one";

    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Length, "choke", "Choke", PlaceKind.Barrel, JetsAndChokes, Specification, Jetting).Usually(20, 50).Setting().With("Three-leg bore gauge at the narrowest.").Accept(Alike, Origins.Practice).Apart(0.1, null),
        Row.Of(Quantity.Length, "chokeAcross", "Choke, other axis", PlaceKind.Barrel, JetsAndChokes).To(2).Usually(20, 50).With("Bore gauge, turned by 90°."),
        Row.Of(Quantity.Words, "auxiliaryVenturi", "Auxiliary venturi", PlaceKind.Barrel, JetsAndChokes, Specification, Jetting).Setting().With("Code or size as cast, such as 4.5."),
        Row.Of(Quantity.JetNumber, "mainJet", "Main jet", PlaceKind.Barrel, JetsAndChokes, Specification, Jetting).Usually(80, 200).Setting().With(Stamped).Accept(Alike, Origins.Practice).Apart(1, null),
        Row.Of(Quantity.JetNumber, "airCorrector", "Air corrector", PlaceKind.Barrel, JetsAndChokes, Specification, Jetting).Usually(100, 250).Setting().With(Stamped).Accept(Alike, Origins.Practice).Apart(1, null),
        Row.Of(Quantity.Words, "emulsionTube", "Emulsion tube", PlaceKind.Barrel, JetsAndChokes, Specification, Jetting).Setting().With("Code as stamped; codes have no order."),
        Row.Of(Quantity.JetNumber, "idleJet", "Idle jet", PlaceKind.Barrel, JetsAndChokes, Specification, Jetting).Usually(35, 80).Setting().With(Stamped).Accept(Alike, Origins.Practice).Apart(1, null),
        Row.Of(Quantity.Words, "idleBleed", "Idle air bleed", PlaceKind.Barrel, JetsAndChokes, Specification, Jetting).Setting().With("Code or bore as stamped."),
        Row.Of(Quantity.JetNumber, "pumpJet", "Pump jet", PlaceKind.Barrel, JetsAndChokes, Specification, Jetting).Usually(25, 80).Setting().With(Stamped).Accept(Alike, Origins.Practice).Apart(1, null),
        Row.Of(Quantity.JetNumber, "backBleed", "Pump back-bleed", PlaceKind.Barrel, JetsAndChokes, Specification, Jetting).Usually(0, 120).Setting().With("0 where it is closed.").Accept(Alike, Origins.Practice).Apart(1, null),
        Row.Of(Quantity.JetNumber, "needleValve", "Needle valve", PlaceKind.Carburettor, JetsAndChokes, Specification).Usually(125, 300).Setting().With(Stamped),
        Row.Of(Quantity.Words, "meteringNeedle", "Metering needle", PlaceKind.Carburettor, JetsAndChokes, Specification, Jetting).Setting().With("Letter code; constant-depression and slide carburettors."),
        Row.Of(Quantity.Length, "mainJetBore", "Main jet, pin gauge", PlaceKind.Barrel, JetsAndChokes).To(2).Usually(0.8, 2).With("Pin gauge: go and no go."),
        Row.Of(Quantity.Length, "idleJetBore", "Idle jet, pin gauge", PlaceKind.Barrel, JetsAndChokes).To(2).Usually(0.3, 0.9).With("Pin gauge: go and no go."),
        Row.Of(Quantity.Length, "airCorrectorBore", "Air corrector, pin gauge", PlaceKind.Barrel, JetsAndChokes).To(2).Usually(0.9, 2.6).With("Pin gauge: go and no go."),
        Row.Of(Quantity.VolumeFlow, "mainJetFlow", "Main jet flow", PlaceKind.Barrel, JetsAndChokes).In("cm³/min", 0, "cm³/min", 0).Usually(50, 600).With("Jet flow rig, head and liquid noted.")
            .Accept("within ±1.5 % across a set", Origins.Practice).OffMean(null, 0.015),
        Row.Of(Quantity.Length, "pumpStroke", "Pump stroke", PlaceKind.Carburettor, JetsAndChokes, Bench).Usually(2, 25).Setting(),
        Row.Of(Quantity.Words, "specificationReason", "Reason and source of the specification", PlaceKind.Car, Specification, Jetting).With("Maker's list first, then each departure and why."),
        Row.Of(Quantity.Distance, "altitudeSet", "Altitude it is set for", PlaceKind.Car, Specification, HandedBack).In("m", 0, "ft", 0).Usually(-100, 3000).Setting(),
    ];
}
