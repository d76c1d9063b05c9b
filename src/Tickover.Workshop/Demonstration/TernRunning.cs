using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Demonstration;

/// <summary>The Tern runs again: tanks filled in steps, balance, mixture, road, and the account to be signed.</summary>
internal static class TernRunning
{
    public static void Play(Script script)
    {
        var visit = TernArrival.Visit(script, 3000);
        Fill(visit);
        Start(visit);
        Balance(visit);
        Mixture(visit);
        Road(visit);
        Left(visit);
    }

    private static void Fill(VisitScript visit) => visit
        .On(Stage.Gauge, 4, Cast.Kerr)
        .Fill("5", "9", "E").Fill("7.5", "23", "0.22").Fill("10", "34", "0.35").Fill("12.5", "44", "0.47").Fill("15", "54", "0.58")
        .Fill("17.5", "63", "0.69").Fill("20", "72", "0.79").Fill("22.5", "81", "0.9").Fill("25", "89", "F")
        .Read(Moment.AsLeft, Cast.Can, ("litresAtEmptyMark", "car", "6"), ("usableVolume", "tank:left", "23"), ("usableVolume", "tank:right", "23"), ("reserve", "car", "6"))
        .Spend(110, "filled in steps of 5 L, 12 min between");

    private static void Start(VisitScript visit) => visit
        .On(Stage.Balance, 3, Cast.Birch)
        .Add(new CautionSeen { Caution = "first-start" }, new CautionSeen { Caution = "indoors" })
        .Sign("leaks", "0.24 bar for 30 min, dry by torch and paper")
        .Sign("throttle-free", "ten of ten, all six plates on their stops")
        .Sign("ventilation", "extraction on both pipes, doors open, alarm tested")
        .Read(Moment.Working, Cast.Gauge, ("leakWatch", "car", "30"), ("oilPressure", "car", "3.8"))
        .Read(Moment.Working, null, ("timeToFire", "car", "9"))
        .Add(new PartLine { What = "Plug lead set", Reference = "5 kΩ caps", State = PartState.Fitted, Price = 48, OldPart = "bag 2" })
        .Read(Moment.Working, Cast.Strobe, ("idleTiming", "bank:1", "10"), ("raisedTiming", "bank:1", "33"), ("dwell", "bank:1", "35"))
        .Read(Moment.Working, null, ("oilTemperature", "car", "82"), ("blanked", "car", "servo and breather connected, advance connected"))
        .Round("airLeak", Moment.AsLeft, Cast.Strobe, 900, "none", "none", "none", "none", "none", "none")
        .Spend(90, "first start, warm through, timing");

    private static void Balance(VisitScript visit) => visit
        .Sign("tune-compression", "10.9 to 11.4 bar")
        .Sign("tune-valves", "0.30 and 0.35 mm, cold, all twelve")
        .Sign("tune-ignition", "10° at idle, 33° at 3,000 rpm, dwell 35°")
        .Sign("tune-spark", "5.1 kΩ each, 0.65 mm")
        .Sign("tune-floats", "25.1 to 25.3 mm wet; passages by flow")
        .Sign("tune-linkage", "paper held under all three stops")
        .Sign("tune-air", "smoke, nothing at bases, spindles or take-offs")
        .Sign("tune-hot", "oil 82 °C, 24 L aboard, extraction on")
        .Add(new CautionSeen { Caution = "hands-linkage" })
        .Round("idleAirflow", Moment.Working, Cast.Air, 870, "3.7", "3.9", "4.4", "4.3", "3.6", "3.7")
        .Round("idleAirflow", Moment.Working, Cast.Air, 900, "3.9", "4.0", "4.2", "4.1", "3.9", "3.9")
        .Read(Moment.Working, null, ("airTemperature", "car", "11"), ("airPressure", "car", "1008"))
        .Work("Six barrels balanced at idle and 2,500 rpm", "Only the weaker barrel of each carburettor has its by-pass open.")
        .Spend(140, "balance, four rounds")
        .Close(3);

    private static void Mixture(VisitScript visit) => visit
        .On(Stage.Mixture, 2, Cast.Birch)
        .Sign("ventilation", "extraction on both pipes, doors open, alarm tested")
        .Sign("tune-hot", "oil 84 °C, 22 L aboard, extraction on")
        .Add(new CautionSeen { Caution = "exhaust-probe" })
        .Round("mixtureTurns", Moment.AsLeft, Cast.Calliper, null, "2.25", "2.25", "2.375", "2.25", "2.125", "2.25")
        .Round("idleAirflow", Moment.AsLeft, Cast.Air, 900, "4.0", "4.1", "4.0", "3.9", "4.1", "4.0")
        .Round("airflow2500", Moment.AsLeft, Cast.Air, 2500, "10.4", "10.5", "10.4", "10.3", "10.5", "10.4")
        .Read(Moment.AsLeft, Cast.Lambda, ("lambdaIdle", "bank:1", "0.90"))
        .Read(Moment.AsLeft, Cast.Gas, ("carbonMonoxide", "bank:1", "3.7"), ("hydrocarbons", "bank:1", "360"), ("oxygen", "bank:1", "0.7"), ("carbonDioxide", "bank:1", "12.6"))
        .Round("dropTest", Moment.AsLeft, Cast.Strobe, 900, "90", "90", "100", "90", "90", "90")
        .Read(Moment.AsLeft, Cast.Strobe, ("idleSpeed", "car", "900"), ("idleTiming", "bank:1", "10"))
        .Read(Moment.AsLeft, null, ("snapThrottle", "car", "clean"))
        .Work("Idle mixture set barrel by barrel", "λ 0.82 was rich; barrel 3 had carried a larger jet.")
        .Spend(100, "idle mixture")
        .Close(2);

    private static void Road(VisitScript visit) => visit
        .On(Stage.Road, 1, Cast.Hale)
        .Sign("road-throttle", "Birch at the pedal, ten of ten, 1° off at full pedal")
        .Sign("road-leaks", "25 min hot, 10 min standing, dry by torch and paper")
        .Sign("road-loose", "every clip by hand, 14 tools counted back")
        .Sign("road-car", "brakes, tyres, lamps and steering tried; under the house's insurance")
        .Add(new CautionSeen { Caution = "road-test" })
        .Read(Moment.AsLeft, null, ("route", "car", "coast road and back, two up, 22 L"), ("hesitation", "car", "clean"))
        .Read(Moment.AsLeft, null, ("roadDistance", "car", "52"))
        .Read(Moment.AsLeft, Cast.Lambda, ("lambdaCruise", "bank:1", "1.00"), ("lambdaProgression", "bank:1", "0.93"), ("lambdaFullLoad", "bank:1", "0.87"))
        .Read(Moment.AsLeft, null, ("restart10", "car", "1.5"), ("restart30", "car", "3.5"), ("underBonnetTemperature", "car", "64"), ("coldStart", "car", "4"), ("garageSmell", "car", "none"))
        .Read(Moment.AsLeft, null, ("overnightDip", "tank:left", "0"), ("overnightDip", "tank:right", "0"), ("needleShown", "car", "half"))
        .Spend(210, "road test, soak, next morning")
        .Close(1);

    private static void Left(VisitScript visit) => visit
        .On(Stage.HandOver, 0, Cast.Hale)
        .Add(new WorkNote { Kind = WorkKind.NotDone, What = "Filler neck hose not renewed", Why = "The hose of the right bend is not to be had until spring; it may crack with age.", Further = "Before next winter." })
        .Add(new WorkNote { Kind = WorkKind.NotDone, What = "Spindle bushes of carburettor 2 not renewed", Why = "The idle may need balancing sooner.", Further = "At the next rebuild." })
        .Add(new WorkNote { Kind = WorkKind.Advice, What = "After a fill give the tanks twelve minutes before you believe the needle", Why = "Fuel crosses to the other side through a pipe of 10 mm." })
        .Add(new WorkNote { Kind = WorkKind.Advice, What = "Fill up at a quarter", Why = "At E about 6 L can still be used, and less on a slope." })
        .Add(new WorkNote { Kind = WorkKind.Advice, What = "Cold start: two slow pumps of the pedal, no choke above 10 °C", Why = "The pump jets give enough; more floods." })
        .Add(new WorkNote { Kind = WorkKind.Private, What = "Owner asked about a stainless tank; offer it when the lining is looked at", Why = "She likes originals." })
        .Begin();
}
