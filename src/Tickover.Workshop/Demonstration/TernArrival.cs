using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Demonstration;

/// <summary>The Tern comes back: brief, bay, survey, baseline, engine condition.</summary>
internal static class TernArrival
{
    public const string Name = "tern-2800/second";

    public static VisitScript Visit(Script script, int begins) => new(script, Name, begins);

    public static void Play(Script script)
    {
        var visit = Visit(script, 0).On(Stage.Arrival, 13, Cast.Hale).Open(new Visit
        {
            Car = Named.Of<CustomerCar>("tern-2800"),
            Owner = Named.Of<Owner>("tern-2800"),
            ArrivedOn = script.Ago(13),
            DueOn = script.Today.AddDays(7),
            Complaint = "The gauge lies, she dies on long bends, and she's lumpy at the lights.",
            Summary = "All three had one family of causes: fuel that could not move freely between the two tanks, a poor earth at the gauge, and six barrels breathing unequally.",
            Wishes = "Reliable touring; nothing drilled, original carburettors kept.",
            Story = "Ran well until two summers ago, then stood eleven months. A clip at the cross-pipe was changed by a friend.",
            Fuel = "E5, super grade",
            Scope = "Find and cure the gauge, the dying on bends and the idle. Tanks out if they must.",
            EstimateHours = 56,
            Estimate = 3900,
            StopAndAsk = 900,
            ScopeAgreed = $"signed {script.Ago(13).ToString("d MMMM", System.Globalization.CultureInfo.InvariantCulture)}",
            OdometerIn = 48210,
            OdometerOut = 48262,
        });
        Bay(visit);
        Baseline(visit);
        Engine(visit);
    }

    private static void Bay(VisitScript visit) => visit
        .Sign("bay-place", "bay 2, chocked; drain cover 9 m away and covered")
        .Sign("bay-ignition", "stove off, charger unplugged, tablet shelf by the door")
        .Sign("bay-battery", "earth lead off and tied back")
        .Sign("bay-fire", "foam, serviced in March; spill kit by the post")
        .Sign("bay-air", "both doors open, alarm pressed and heard")
        .Read(Moment.AsFound, null, ("keys", "car", "2"), ("needleShown", "car", "half"), ("hoseMarking", "run:cross-pipe", "none legible"), ("hoseMarking", "run:pump to carburettors", "marked, nine years old"), ("returnSprings", "car", "two, both pull"))
        .Read(Moment.AsFound, null, ("jointWetness", "run:cross-pipe", "stained"), ("jointWetness", "run:pump to carburettors", "dry"), ("pipeCondition", "run:cross-pipe", "cracked"))
        .Read(Moment.AsFound, Cast.Calliper, ("linkPlay", "carburettor:1", "0.05"), ("linkPlay", "carburettor:2", "0.08"), ("linkPlay", "carburettor:3", "0.05"))
        .Read(Moment.AsFound, null, ("stopTouches", "carburettor:1", "touches"), ("stopTouches", "carburettor:2", "does not touch"), ("stopTouches", "carburettor:3", "touches"))
        .Add(new Finding { Severity = Severity.Soon, State = FindingState.PutRight, Where = "gauge earth, behind the dash", What = "Gauge earth corroded", Detail = "1.4 Ω to the body, so the needle read low.", Decision = "Cleaned, new eyelet, 0.05 Ω now.", ApprovedBy = "within scope" })
        .Add(new Finding { Severity = Severity.Watch, State = FindingState.Left, Where = "filler neck hose", What = "Filler hose of a kind not meant for fuel", Detail = "No marking; still supple, no crack.", Decision = "Left: the hose of the right bend is not to be had until spring.", ApprovedBy = "Mrs Teal" })
        .Spend(180, "survey with photographs");

    private static void Baseline(VisitScript visit) => visit
        .On(Stage.Arrival, 13, Cast.Birch)
        .Sign("leaks", "0.24 bar for 10 min, stained but dry by paper, both tanks low")
        .Sign("throttle-free", "ten of ten; middle stop screw does not touch, written down")
        .Sign("ventilation", "extraction on both pipes, doors open, alarm tested")
        .Read(Moment.AsFound, Cast.Strobe, ("idleSpeed", "car", "820"), ("idleTiming", "bank:1", "8"))
        .Round("idleAirflow", Moment.AsFound, Cast.Air, 820, "3.4", "3.9", "5.2", "4.6", "3.0", "3.2")
        .Round("airflow2500", Moment.AsFound, Cast.Air, 2500, "9.8", "10.3", "11.6", "11.0", "9.2", "9.6")
        .Read(Moment.AsFound, Cast.Lambda, ("lambdaIdle", "bank:1", "0.82"))
        .Read(Moment.AsFound, Cast.Gas, ("carbonMonoxide", "bank:1", "6.8"), ("hydrocarbons", "bank:1", "780"), ("oxygen", "bank:1", "1.1"), ("carbonDioxide", "bank:1", "10.1"))
        .Round("dropTest", Moment.AsFound, Cast.Strobe, 820, "70", "80", "110", "100", "50", "60")
        .Read(Moment.AsFound, null, ("snapThrottle", "car", "hesitates"))
        .Spend(50, "baseline");

    private static void Engine(VisitScript visit) => visit
        .Round("compression", Moment.AsFound, Cast.Compression, null, "11.2", "11.0", "11.4", "10.9", "11.1", "11.3")
        .Round("plugLead", Moment.AsFound, Cast.Meter, null, "5.1", "5.0", "5.3", "5.2", "9.8", "5.1")
        .Read(Moment.AsFound, Cast.Strobe, ("staticTiming", "bank:1", "8"), ("dwell", "bank:1", "34"), ("raisedTiming", "bank:1", "31"))
        .Read(Moment.AsFound, Cast.Calliper, ("plugGap", "car", "0.75"))
        .Read(Moment.AsFound, Cast.Meter, ("chargingVoltage", "car", "14.1"))
        .Add(new Finding { Severity = Severity.Soon, State = FindingState.PutRight, Where = "plug lead 5", What = "Plug lead 5 has twice the resistance of the rest", Detail = "9.8 kΩ against 5.1 kΩ.", Decision = "New lead set.", ApprovedBy = "within scope" })
        .NotRead("leakDown", "cylinder:5", "adaptor on loan; compression leaves no doubt")
        .Add(new WorkNote { Kind = WorkKind.NotMeasured, What = "Leak-down of the cylinders", Why = "The adaptor was on loan; compression lay within 5 per cent." })
        .Spend(150, "engine condition")
        .Close(13);
}
