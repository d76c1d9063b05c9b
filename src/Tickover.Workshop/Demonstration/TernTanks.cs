using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Demonstration;

/// <summary>The Tern's tanks, gauge and supply.</summary>
internal static class TernTanks
{
    public static void Play(Script script)
    {
        var visit = TernArrival.Visit(script, 1000);
        Storage(visit, script);
        Gauge(visit);
        Supply(visit);
    }

    private static void Storage(VisitScript visit, Script script) => visit
        .On(Stage.Storage, 12, Cast.Kerr)
        .Add(new CautionSeen { Caution = "draining" })
        .Read(Moment.AsFound, Cast.Can, ("drained", "tank:left", "19"), ("drained", "tank:right", "7"), ("ethanol", "tank:left", "4"))
        .Read(Moment.AsFound, null, ("fuelAppearance", "tank:left", "rust or dirt"), ("fuelAppearance", "tank:right", "water at the bottom"), ("fuelSmell", "tank:left", "varnish"), ("fuelSmell", "tank:right", "varnish"), ("fuelWentTo", "tank:left", "drum 4, carrier's note 118"))
        .Add(new Finding { Severity = Severity.Unsafe, State = FindingState.PutRight, Where = "between the tanks", What = "Cross-pipe hose perished, weeps at the clip", Detail = "Wept as soon as the tanks were filled to measure them.", Decision = "New R9 hose, dated this year. Old piece in bag 1.", ApprovedBy = "within scope", SettledOn = script.Ago(8) })
        .Add(new CautionSeen { Caution = "tank-water" })
        .Read(Moment.AsFound, null, ("tankInside", "tank:left", "light rust"), ("tankInside", "tank:right", "pitted"), ("tankTest", "tank:left", "water and dye"), ("tankTest", "tank:right", "water and dye"))
        .Read(Moment.AsFound, Cast.Can, ("tankVolume", "tank:left", "27"), ("tankVolume", "tank:right", "27"))
        .Read(Moment.AsFound, Cast.Wall, ("tankWall", "tank:left", "0.9"), ("tankWall", "tank:right", "0.6"), ("pitDepth", "tank:right", "0.3"))
        .Read(Moment.AsFound, null, ("tankTestTime", "tank:left", "1440"), ("tankTestTime", "tank:right", "1440"))
        .Add(new Finding { Severity = Severity.Soon, State = FindingState.PutRight, Where = "right tank, underside", What = "Right tank pitted under its pad", Detail = "0.6 ±0.1 mm left of 0.9 at the worst pit.", Decision = "Relined. Look again in four years.", ApprovedBy = "Mrs Teal", SettledOn = script.Ago(6) })
        .Add(new Approval { Asked = "Right tank: new tank or reline?", Price = 240, AskedOn = script.Ago(10), Answer = ApprovalAnswer.Yes, AnswerWords = "Reline, by telephone: “I would rather keep her own.”", AnsweredOn = script.Ago(9) })
        .On(Stage.Storage, 8, Cast.Kerr)
        .Add(new CautionSeen { Caution = "de-rust" })
        .Add(new PartLine { What = "Tank lining kit", Reference = "ethanol-proof, batch on the tin", State = PartState.Fitted, Price = 85, OrderedOn = script.Ago(9), OldPart = "none" })
        .Work("Right tank de-rusted, dried and lined; left tank rinsed and dried", "Flakes had blocked the cross-pipe.")
        .Read(Moment.AsLeft, null, ("tankInside", "tank:left", "clean"), ("tankInside", "tank:right", "old lining, sound"), ("tankDecision", "tank:left", "keep"), ("tankDecision", "tank:right", "line"))
        .Spend(420, "tanks out, tested, lined")
        .Close(12);

    private static void Gauge(VisitScript visit) => visit
        .On(Stage.Gauge, 8, Cast.Kerr)
        .Add(new CautionSeen { Caution = "sender" })
        .Read(Moment.AsFound, null, ("crossPipe", "car", "partly blocked"), ("vent", "tank:left", "clear"), ("vent", "tank:right", "blocked"), ("senderWiring", "car", "one sender"), ("senderSweep", "tank:left", "smooth"))
        .Read(Moment.AsFound, Cast.Calliper, ("crossPipeBore", "car", "10"))
        .Read(Moment.AsFound, Cast.Meter, ("senderEmpty", "tank:left", "4"), ("senderQuarter", "tank:left", "26"), ("senderHalf", "tank:left", "45"), ("senderThreeQuarters", "tank:left", "68"), ("senderFull", "tank:left", "89"), ("senderEarth", "tank:left", "1.4"))
        .Read(Moment.AsFound, null, ("needleAtEmpty", "car", "E"), ("needleAtHalf", "car", "0.31"), ("needleAtFull", "car", "0.78"), ("settlingTime", "car", "45"))
        .Add(new Finding { Severity = Severity.Soon, State = FindingState.PutRight, Where = "cross-pipe and right vent", What = "Cross-pipe half blocked and right vent shut", Detail = "45 min to level after a fill from one side; on long bends the outlet side ran dry.", Decision = "Both cleared.", ApprovedBy = "within scope" })
        .Work("Cross-pipe and right vent cleared; gauge earth made good", "The fuel could not follow, and the needle read low.")
        .Read(Moment.AsLeft, null, ("crossPipe", "car", "clear"), ("vent", "tank:right", "clear"), ("settlingTime", "car", "12"), ("needleAtEmpty", "car", "E"), ("needleAtHalf", "car", "half"), ("needleAtFull", "car", "F"))
        .Read(Moment.AsLeft, Cast.Meter, ("senderEarth", "tank:left", "0.05"))
        .Spend(150, "senders, pipe, earth")
        .Close(8);

    private static void Supply(VisitScript visit) => visit
        .On(Stage.Supply, 8, Cast.Kerr)
        .Add(new CautionSeen { Caution = "fuel-joint" })
        .Read(Moment.AsFound, Cast.Gauge, ("fuelPressure", "car", "0.24"), ("fuelFlow", "car", "48"))
        .Read(Moment.AsFound, null, ("filterFound", "run:pump to carburettors", "rust"), ("pumpCutOff", "car", "none fitted"))
        .Add(
            new PartLine { What = "Hose, cross-pipe", Reference = "SAE J30 R9, dated this year", Quantity = "0.4 m", State = PartState.Fitted, Price = 14, OldPart = "bag 1, given back" },
            new PartLine { What = "Hoses, tank to carburettors", Reference = "SAE J30 R9, dated this year", Quantity = "2.6 m", State = PartState.Fitted, Price = 62, OldPart = "bag 1" },
            new PartLine { What = "Filters, coarse and fine", Reference = "40 and 10 µm", Quantity = "2", State = PartState.Fitted, Price = 28, OldPart = "bag 2" },
            new PartLine { What = "Inertia cut-off for the pump", Reference = "with plug", State = PartState.Fitted, Price = 46, OldPart = "none" })
        .Read(Moment.AsLeft, null, ("hoseFitted", "run:cross-pipe", "SAE J30 R9, dated this year"), ("hoseFitted", "run:pump to carburettors", "SAE J30 R9, dated this year"), ("pumpCutOff", "car", "stops the pump"))
        .Add(new CautionSeen { Caution = "pump-flow" })
        .Read(Moment.AsLeft, Cast.Gauge, ("fuelPressure", "car", "0.24"), ("fuelFlow", "car", "66"), ("pressureHeld", "car", "8"))
        .Read(Moment.AsLeft, Cast.Meter, ("pumpVoltage", "car", "13.2"))
        .Work("All hoses and filters renewed, cut-off fitted", "Old hose cracked; nothing stopped the pump in a crash.")
        .Add(new WorkNote { Kind = WorkKind.Changed, What = "Inertia cut-off added to the pump's feed", Why = "The pump ran on whatever happened.", Further = "Unplug it under the parcel shelf and join the two plugs." })
        .Spend(330, "hoses, filters, pump")
        .Close(8);
}
