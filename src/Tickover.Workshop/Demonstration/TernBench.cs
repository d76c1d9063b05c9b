using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Demonstration;

/// <summary>The Tern's carburettors off, on the bench and on again.</summary>
internal static class TernBench
{
    public static void Play(Script script)
    {
        var visit = TernArrival.Visit(script, 2000);
        Strip(visit);
        Measure(visit);
        Build(visit);
        Refit(visit);
    }

    private static void Strip(VisitScript visit) => visit
        .On(Stage.StripDown, 7, Cast.Birch)
        .Add(new CautionSeen { Caution = "residues" }, new CautionSeen { Caution = "asbestos" })
        .Round("mixtureTurns", Moment.AsFound, Cast.Calliper, null, "2.25", "2.5", "3", "2.75", "1.75", "2")
        .Round("bypassTurns", Moment.AsFound, Cast.Calliper, null, "0", "0.5", "1", "0.5", "0", "0")
        .Round("stopTurns", Moment.AsFound, Cast.Calliper, null, "1", "0.5", "1")
        .Round("rodLength", Moment.AsFound, Cast.Calliper, null, "118.4", "117.2", "118.4")
        .Round("leverAngle", Moment.AsFound, Cast.Calliper, null, "12", "13", "12")
        .Round("floatDry", Moment.AsFound, Cast.Calliper, null, "7.6", "8.4", "7.5")
        .Add(new CautionSeen { Caution = "solvent" })
        .Read(Moment.Working, null, ("cleaningMethod", "carburettor:1", "water-based ultrasonic bath"), ("cleaningMethod", "carburettor:2", "water-based ultrasonic bath"), ("cleaningMethod", "carburettor:3", "water-based ultrasonic bath"))
        .Round("cleaningTemperature", Moment.Working, Cast.Meter, null, "50", "50", "50")
        .Round("passagesProved", Moment.AsLeft, Cast.Calliper, null, "all, by flow", "all, by flow", "all, by flow", "all, by flow", "all, by flow", "all, by flow")
        .Work("Three carburettors stripped, cleaned, every passage proved by flow", "Rust from the right tank lay in all three bowls.")
        .Spend(360, "strip and clean");

    private static void Measure(VisitScript visit) => visit
        .On(Stage.StripDown, 6, Cast.Birch)
        .Round("choke", Moment.AsFound, Cast.Calliper, null, "32", "32", "32", "32", "32", "32")
        .Round("mainJet", Moment.AsFound, Cast.Calliper, null, "135", "135", "135", "135", "135", "135")
        .Round("airCorrector", Moment.AsFound, Cast.Calliper, null, "190", "190", "190", "190", "190", "190")
        .Round("idleJet", Moment.AsFound, Cast.Calliper, null, "50", "50", "55", "50", "50", "50")
        .Round("pumpJet", Moment.AsFound, Cast.Calliper, null, "40", "40", "40", "40", "40", "40")
        .Round("spindleClearance", Moment.AsFound, Cast.Calliper, null, "0.04", "0.04", "0.08", "0.07", "0.05", "0.04")
        .Round("floatMass", Moment.AsFound, Cast.Calliper, null, "24.1", "24.3", "24.2")
        .Round("needleHolds", Moment.AsFound, Cast.Gauge, null, "40", "9", "35")
        .Round("wearVerdict", Moment.AsFound, Cast.Calliper, null, "good", "good", "usable", "usable", "good", "good")
        .Add(new Finding { Severity = Severity.Soon, State = FindingState.PutRight, Where = "carburettor 2", What = "Needle valve of carburettor 2 does not hold", Detail = "9 s against 15 s asked; float 0.8 mm high.", Decision = "Three new needle valves.", ApprovedBy = "within scope" })
        .Add(new Finding { Severity = Severity.Soon, State = FindingState.PutRight, Where = "barrel 3", What = "One idle jet larger than the rest", Detail = "55 in barrel 3, 50 in the others.", Decision = "50 fitted, the 55 in bag 3.", ApprovedBy = "within scope" })
        .Add(new Finding { Severity = Severity.Watch, State = FindingState.Left, Where = "carburettor 2", What = "Carburettor 2 spindle has 0.08 mm of play", Detail = "Can move its idle air by a tenth.", Decision = "Left as it is; may need balancing sooner.", ApprovedBy = "Mrs Teal" })
        .Spend(240, "measured and identified")
        .Close(7);

    private static void Build(VisitScript visit) => visit
        .On(Stage.Build, 5, Cast.Birch)
        .Add(
            new PartLine { What = "Gasket and needle valve sets", Reference = "175 seats", Quantity = "3", State = PartState.Fitted, Price = 96, OldPart = "bag 3" },
            new PartLine { What = "Idle jet 50", Reference = "50", State = PartState.Fitted, Price = 6, OldPart = "bag 3" })
        .Read(Moment.AsLeft, null, ("specificationReason", "car", "as the maker's list; nothing asked for a change"))
        .Round("floatDry", Moment.AsLeft, Cast.Calliper, null, "7.5", "7.5", "7.5")
        .Round("floatDrop", Moment.AsLeft, Cast.Calliper, null, "15", "15", "15")
        .Round("floatWet", Moment.AsLeft, Cast.Calliper, null, "25.1", "25.3", "25.2")
        .Round("idleJet", Moment.AsLeft, Cast.Calliper, null, "50", "50", "50", "50", "50", "50")
        .Round("pumpShot", Moment.AsLeft, Cast.Cylinder, null, "4.1", "4.2", "4.0", "4.1", "4.2", "4.1")
        .Round("needleHolds", Moment.AsLeft, Cast.Gauge, null, "60", "60", "60")
        .Work("Three carburettors rebuilt, wet levels within 0.2 mm", "Levels 0.9 mm apart flooded the middle one.")
        .Spend(300, "rebuilt and set on the bench");

    private static void Refit(VisitScript visit) => visit
        .On(Stage.Build, 4, Cast.Birch)
        .Add(new CautionSeen { Caution = "jammed-throttle" })
        .Round("rodLength", Moment.AsLeft, Cast.Calliper, null, "118.4", "118.4", "118.4")
        .Round("leverAngle", Moment.AsLeft, Cast.Calliper, null, "12", "12", "12")
        .Round("fullThrottleAngle", Moment.AsLeft, Cast.Calliper, null, "1", "1", "0", "1", "1", "1")
        .Round("baseTorque", Moment.AsLeft, Cast.Calliper, null, "16", "16", "16")
        .Read(Moment.AsLeft, null, ("snapShut", "car", "10"), ("linkageClearance", "car", "7"), ("springHooks", "car", "outer holes; pedal stop one turn before the plates"))
        .Round("stopTouches", Moment.AsLeft, Cast.Calliper, null, "touches", "touches", "touches")
        .Work("Refitted, rods made equal, linkage set", "A short middle rod held its plates open, so its stop screw did nothing.")
        .Spend(210, "refitted, linkage")
        .Close(5);
}
