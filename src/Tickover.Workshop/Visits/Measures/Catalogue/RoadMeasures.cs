using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>On the road, hot soak, the next morning, the follow-up.</summary>
internal static class RoadMeasures
{
    private const string LoggerHint = "The passenger logs; the driver never touches the device.";

    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Words, "route", "Route and load", PlaceKind.Car, RoadTest).With("The same route, gear and fuel load each time."),
        Row.Of(Quantity.Distance, "roadDistance", "Distance driven", PlaceKind.Car, RoadTest).Usually(1, 300),
        Row.Of(Quantity.Percent, "humidity", "Relative humidity", PlaceKind.Car, RoadTest).Usually(10, 100),
        Row.Of(Quantity.Lambda, "lambdaCruise", "λ at light cruise", PlaceKind.Bank, RoadTest).Usually(0.7, 1.3).Setting().Running().With(LoggerHint).Accept("0.95 to 1.05", Origins.Practice).AtLeast(0.95).AtMost(1.05),
        Row.Of(Quantity.Lambda, "lambdaProgression", "λ in progression", PlaceKind.Bank, RoadTest).Usually(0.7, 1.3).Setting().Running().With(LoggerHint).Accept("0.88 to 0.95", Origins.Practice).AtLeast(0.88).AtMost(0.95),
        Row.Of(Quantity.Lambda, "lambdaFullLoad", "λ at full load", PlaceKind.Bank, RoadTest).Usually(0.7, 1.1).Setting().Running().With(LoggerHint + " Too lean here can destroy pistons.")
            .Accept("0.84 to 0.88", Origins.Practice).AtLeast(0.84).AtMost(0.88),
        Row.Of(Quantity.Lambda, "lambdaTipIn", "λ at tip-in, lowest", PlaceKind.Bank, RoadTest).Usually(0.6, 1.3).Setting().Running().With(LoggerHint).Accept("0.75 to 0.86, for a moment", Origins.Practice).AtLeast(0.75).AtMost(0.86),
        Row.Of(Quantity.Depression, "cruiseDepression", "Manifold depression at cruise", PlaceKind.Bank, RoadTest).Usually(10, 80).Running().With(LoggerHint),
        Row.Choice("hesitation", "On opening", PlaceKind.Car, [RoadTest], "clean", "hesitates", "spits back", "hangs on closing").Setting().Running().Accept("no hesitation, no spit", Origins.Practice),
        Row.Of(Quantity.Duration, "restart10", "Cranking after 10 min soak", PlaceKind.Car, RoadTest, HotSoak).To(1).Usually(0, 30).Setting().Running().Accept("3 to 5 s", Origins.Practice).AtMost(5),
        Row.Of(Quantity.Duration, "restart30", "Cranking after 30 min soak", PlaceKind.Car, RoadTest, HotSoak).To(1).Usually(0, 30).Setting().Running().Accept("3 to 5 s", Origins.Practice).AtMost(5),
        Row.Of(Quantity.Length, "bowlFall", "Bowl level fall in 30 min", PlaceKind.Carburettor, HotSoak).Usually(0, 20).Setting(),
        Row.Choice("percolation", "Nozzles after stopping", PlaceKind.Barrel, [HotSoak], "dry", "drip", "boil over").Setting(),
        Row.Of(Quantity.Temperature, "underBonnetTemperature", "Under-bonnet air", PlaceKind.Car, HotSoak).Usually(20, 120),
        Row.Of(Quantity.Duration, "coldStart", "Cranking, cold", PlaceKind.Car, NextMorning).To(1).Usually(0, 60).Setting().Running(),
        Row.Of(Quantity.Length, "overnightDip", "Dip lost overnight", PlaceKind.Tank, NextMorning).To(0).Usually(-5, 50).Accept("none", Origins.Practice).AtMost(0),
        Row.Choice("garageSmell", "Smell in the closed garage", PlaceKind.Car, [NextMorning, FollowUp], "none", "faint", "strong").Setting().Accept("none overnight", Origins.Practice),
        Row.Choice("baseNuts", "Base nuts, cold", PlaceKind.Carburettor, [NextMorning, FollowUp], "tight", "moved").With("Re-check the balance where they moved."),
        Row.Of(Quantity.Distance, "distanceSince", "Distance since hand-over", PlaceKind.Car, FollowUp).Usually(50, 1000).Accept("at 100 to 300 miles", Origins.Practice).AtLeast(161).AtMost(483),
    ];
}
