using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>The car taken in, the bay made ready, the survey as found. Odometer and story stand with the visit itself.</summary>
internal static class ArrivalMeasures
{
    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Count, "keys", "Keys taken", PlaceKind.Car, Brief).Usually(1, 6),
        Row.Of(Quantity.GaugeScale, "needleShown", "Fuel gauge shows", PlaceKind.Car, Brief, HandedBack).Usually(0, 1).Setting().With("Car level, ignition on for a minute. E, 1/4, half, F."),
        Row.Of(Quantity.PartsPerMillion, "carbonMonoxideInAir", "Carbon monoxide in the bay", PlaceKind.Car, BaySafe, FirstStart).Usually(0, 100).With("Alarm at head height.")
            .Accept("20 ppm over 8 h, 100 ppm over 15 min; follow the local limit", "EH40/2005 as amended 2018, " + Origins.FromMemory).AtMost(20),
        Row.Of(Quantity.Percent, "vapourInBay", "Petrol vapour, % of lower explosive limit", PlaceKind.Car, BaySafe).Usually(0, 20).With("Gas detector, low down: vapour is heavier than air. Put the tablet down outside the zone.")
            .Accept("petrol vapour burns from about 1 % to 8 % in air", Origins.Authority),
        Row.Of(Quantity.Words, "hoseMarking", "Hose standard and date", PlaceKind.Run, Survey, HosesAndFilters).Setting().With("As printed on the hose; \"none\" where there is none."),
        Row.Of(Quantity.Duration, "hoseAge", "Age of hose", PlaceKind.Run, Survey).In("years", 0, "years", 0).Usually(0, 40)
            .Accept("younger than about 5 years, less where the marking is doubtful", Origins.Practice).AtMost(5),
        Row.Choice("pipeCondition", "Pipe or hose", PlaceKind.Run, [Survey, HosesAndFilters], "sound", "chafed", "scabbed", "cracked", "wrong kind").Setting().With("Never wire-brush a thin wall; look under clips."),
        Row.Choice("jointWetness", "Joint", PlaceKind.Run, [Survey, FirstStart, HotSoak, FollowUp], "dry", "stained", "weeping", "dripping").Setting().With("Paper towel and torch.")
            .Accept("no weep at all", Origins.Practice),
        Row.Choice("drainWetness", "Float bowl and drain", PlaceKind.Carburettor, [Survey, FirstStart], "dry", "stained", "wet").Setting()
            .Accept("no weep at all", Origins.Practice),
        Row.Of(Quantity.Length, "linkPlay", "Free play at the ball", PlaceKind.Carburettor, Survey, Linkage).To(2).Usually(0, 2).Setting().With("Dial gauge on the lever.")
            .Accept("at most 0.1 mm a ball", Origins.Practice).AtMost(0.1),
        Row.Choice("stopTouches", "Stop screw", PlaceKind.Carburettor, [Survey, BarrelBalance], "touches", "does not touch").Setting().With("Rods off: a rod that holds the plate open hides it.")
            .Accept("touches its stop", Origins.Practice),
        Row.Choice("returnSprings", "Return springs", PlaceKind.Car, [Survey, Linkage], "two, both pull", "one", "none", "weak").Setting()
            .Accept("two independent springs", Origins.Practice),
        Row.Of(Quantity.EngineSpeed, "crankingSpeed", "Cranking speed", PlaceKind.Car, Baseline).Usually(80, 350).With("Where it does not run."),
        Row.Choice("spark", "Spark", PlaceKind.Cylinder, [Baseline], "strong", "weak", "none").With("With a spark gap tester, away from fuel."),
        Row.Choice("fuelAtBowl", "Fuel at the bowl", PlaceKind.Carburettor, [Baseline, FirstStart], "fuel", "dry", "flooding"),
        Row.Choice("snapThrottle", "Snap throttle", PlaceKind.Car, [Baseline, IdleMixture, RoadTest], "clean", "hesitates", "spits back", "stalls").Setting().Running(),
        Row.Of(Quantity.Temperature, "headerTemperature", "Exhaust stub temperature", PlaceKind.Cylinder, Baseline, IdleMixture).Usually(100, 500).Setting().Running().With("Same spot on each stub, same time after start."),
    ];
}
