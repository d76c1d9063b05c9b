using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>What the exhaust and the engine say of the mixture.</summary>
internal static class MixtureMeasures
{
    private const string AnalyserHint = "Analyser warm, zeroed, leak-checked; probe 40 cm in; 2,000 rpm for 30 s, then 30 s at idle.";

    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Lambda, "lambdaIdle", "λ at idle", PlaceKind.Bank, Baseline, IdleMixture, FollowUp).Usually(0.7, 1.3).Round().With("A misfire, a leak or a shallow probe shows as lean.")
            .Accept("0.88 to 0.95 with mild cams, banks within ±0.02", Origins.Practice).AtLeast(0.88).AtMost(0.95).OffMean(0.02, null),
        Row.Of(Quantity.GasPercent, "carbonMonoxide", "CO at idle", PlaceKind.Bank, Baseline, IdleMixture, FollowUp).Usually(0.5, 8).Round().With(AnalyserHint)
            .Accept("2 to 4.5 % with mild cams, banks within ±0.5 %", Origins.Practice).AtLeast(2).AtMost(4.5).OffMean(0.5, null),
        Row.Of(Quantity.PartsPerMillion, "hydrocarbons", "HC at idle", PlaceKind.Bank, Baseline, IdleMixture).Usually(50, 3000).Setting().Running().With(AnalyserHint + " Subtract what hangs in the hose.")
            .Accept("1,200 ppm at idle in use, by date of the car", "MOT inspection manual, " + Origins.Authority).AtMost(1200),
        Row.Of(Quantity.GasPercent, "oxygen", "O₂ at idle", PlaceKind.Bank, Baseline, IdleMixture).Usually(0, 5).Setting().Running().With(AnalyserHint),
        Row.Of(Quantity.GasPercent, "carbonDioxide", "CO₂ at idle", PlaceKind.Bank, Baseline, IdleMixture).Usually(8, 16).Setting().Running().With(AnalyserHint)
            .Accept("CO and CO₂ together 15 to 17.5 % when rich; less is a diluted sample", Origins.Derived),
        Row.Of(Quantity.EngineSpeed, "dropTest", "Speed drop, spark cut", PlaceKind.Cylinder, Baseline, IdleMixture).Usually(0, 300).Round().With("Insulated, earthed shorting lead, a few seconds; check the ignition allows it.")
            .Accept("equal drops are equal work; no drop is a dead cylinder", Origins.Practice),
        Row.Of(Quantity.Lambda, "lambdaBarrel", "λ at idle, each barrel", PlaceKind.Barrel, IdleMixture).Usually(0.7, 1.3).Round().With("Of one cylinder alone: a sampling point in its header, probe deep, engine hot.")
            .Accept("0.88 to 0.95 with mild cams", Origins.Practice).AtLeast(0.88).AtMost(0.95),
        Row.Of(Quantity.EngineSpeed, "screwSpeed", "Idle speed as one mixture screw is tried", PlaceKind.Barrel, IdleMixture).Usually(500, 1500).Round().With("Note it before the first turn and after each; let it settle."),
        Row.Of(Quantity.EngineSpeed, "screwDrop", "Speed fall, a quarter-turn of the screw", PlaceKind.Barrel, IdleMixture).Usually(0, 150).Setting().Running()
            .Accept("about 25 rpm each way at 900 rpm, alike on every screw", Origins.Practice),
        Row.Of(Quantity.Count, "jetNutFlats", "Jet nut, flats down", PlaceKind.Carburettor, AsFoundSettings, Bench, IdleMixture).Usually(0, 24).Setting().With("Constant-depression carburettors; a flat is a sixth of a turn.")
            .Accept("12 down as a start; 3 to 5 more on one is an air leak", Origins.TradeText).Apart(3, null),
        Row.Choice("pistonLift", "Speed on lifting the piston 0.8 mm", PlaceKind.Carburettor, [IdleMixture], "rises slightly, settles", "rises and stays up", "falls at once").Setting().Running().With("0.8 mm after free movement, by the lift pin.")
            .Accept("rises very slightly, then settles", Origins.Practice),
        Row.Choice("plugReading", "Plug", PlaceKind.Cylinder, [Baseline, Jetting, RoadTest, FollowUp], "biscuit", "white", "sooty", "oily", "wet").Setting().With("New plug, one regime for a mile, cut and coast. A trend, no ratio."),
    ];
}
