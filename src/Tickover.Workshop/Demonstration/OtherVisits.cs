using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Demonstration;

/// <summary>The other cars in the shop, each at its own place on the route.</summary>
internal static class OtherVisits
{
    public static void Play(Script script)
    {
        Osprey(script);
        Gannet(script);
        Marram(script);
        Tern2400(script);
        Dunlin(script);
    }

    private static VisitScript In(Script script, string car, int daysAgo, Visit visit) => new VisitScript(script, car, 0).On(Stage.Arrival, daysAgo, Cast.Hale).Open(visit with
    {
        Car = Named.Of<CustomerCar>(car),
        Owner = Named.Of<Owner>(car),
        ArrivedOn = script.Ago(daysAgo),
        ScopeAgreed = "signed on arrival",
    });

    private static void Ready(VisitScript visit) => Array.ForEach([.. GateCatalogue.Of(Gate.BayReady).Checks], c => visit.Sign(c.Key, "seen and as it should be, written on the bay sheet"));

    private static void Done(VisitScript visit, int daysAgo, params Stage[] stages) => Array.ForEach(stages, s => visit.On(s, daysAgo, Cast.Kerr).Close(daysAgo));

    private static void Osprey(Script script)
    {
        var visit = In(script, "osprey-v8", 22, new Visit { DueOn = script.Today.AddDays(4), Complaint = "Spits and hesitates when I pull out of a village.", Scope = "Find the hesitation, balance, jet as needed.", EstimateHours = 30, StopAndAsk = 600, OdometerIn = 61877, Fuel = "E5" });
        Ready(visit);
        visit.Read(Moment.AsFound, Cast.Strobe, ("idleSpeed", "car", "950"))
            .Round("idleAirflow", Moment.AsFound, Cast.Air, 950, "4.4", "4.1", "4.9", "4.5", "3.8", "4.0", "4.6", "4.2")
            .Read(Moment.AsFound, Cast.Lambda, ("lambdaIdle", "bank:1", "0.97"), ("lambdaIdle", "bank:2", "1.01"));
        Done(visit, 15, Stage.Arrival, Stage.Storage, Stage.Gauge, Stage.Supply, Stage.StripDown, Stage.Build);
        visit.On(Stage.Balance, 5, Cast.Birch)
            .Sign("leaks", "0.26 bar for 10 min, dry by torch and paper").Sign("throttle-free", "ten of ten, all eight plates on their stops").Sign("ventilation", "extraction on, alarm tested")
            .Add(new SignOff { Gate = Gate.FitToTune, Override = "leak-down of cylinder 6 waits for the adaptor; compression is even" })
            .Round("idleAirflow", Moment.Working, Cast.Air, 920, "4.2", "4.3", "4.2", "4.2", "4.1", "4.2", "4.3", "4.2")
            .Work("Eight barrels balanced, banks matched", "Right bank was more shut.")
            .Close(5)
            .On(Stage.Mixture, 4, Cast.Birch).Begin()
            .Read(Moment.Working, Cast.Lambda, ("lambdaIdle", "bank:1", "0.95"), ("lambdaIdle", "bank:2", "0.96"));
    }

    private static void Gannet(Script script) => In(script, "gannet-1500", 1, new Visit { Complaint = "Smells of petrol in the morning.", Scope = "Find the smell; ring before anything else.", EstimateHours = 3, OdometerIn = 33015, Fuel = "E10" })
        .Read(Moment.AsFound, null, ("keys", "car", "1"), ("needleShown", "car", "quarter"))
        .Add(new Finding { Severity = Severity.Unsafe, Where = "under the boot floor", What = "Petrol smell at the rear, drip not yet found", Detail = "Strongest at the left rear wheel." })
        .Begin();

    private static void Marram(Script script)
    {
        var visit = In(script, "marram-six", 19, new Visit { Complaint = "Starves on hills.", Scope = "Tanks and supply.", EstimateHours = 20, StopAndAsk = 400, OdometerIn = 8112, Fuel = "E5", WaitsOn = WaitsOn.Owner, WaitingFor = "new tank or reline?", WaitingSince = script.Ago(7) });
        Ready(visit);
        visit.Add(new WorkNote { Kind = WorkKind.NotMeasured, What = "How she ran as found", Why = "Not to be run on fuel with rust in it." }).Close(19)
            .On(Stage.Storage, 12, Cast.Kerr).Begin()
            .Read(Moment.AsFound, Cast.Can, ("drained", "tank:1", "31"))
            .Read(Moment.AsFound, null, ("fuelAppearance", "tank:1", "rust or dirt"), ("tankInside", "tank:1", "pitted"), ("tankTest", "tank:1", "water and dye"))
            .Read(Moment.AsFound, Cast.Wall, ("pitDepth", "tank:1", "0.5"))
            .Add(new Finding { Severity = Severity.Soon, Where = "tank", What = "Tank pitted to 0.5 mm", Detail = "Nothing can be fitted until this is answered." })
            .Add(new Approval { Asked = "New tank or reline? Price sent.", Price = 620, AskedOn = script.Ago(7) });
    }

    private static void Tern2400(Script script)
    {
        var visit = In(script, "tern-2400", 15, new Visit { Complaint = "Will not idle below 1,400.", Scope = "Carburettors.", EstimateHours = 24, StopAndAsk = 500, OdometerIn = 71200, Fuel = "E5", WaitsOn = WaitsOn.Parts, WaitingFor = "two spindles", WaitingSince = script.Ago(8) });
        Ready(visit);
        visit.Read(Moment.AsFound, Cast.Strobe, ("idleSpeed", "car", "1400"));
        Done(visit, 12, Stage.Arrival, Stage.Storage, Stage.Gauge, Stage.Supply);
        visit.On(Stage.StripDown, 8, Cast.Birch).Begin()
            .Round("spindleClearance", Moment.AsFound, Cast.Calliper, null, "0.18", "0.17", "0.06", "0.05", "0.16", "0.19")
            .Add(new Finding { Severity = Severity.Soon, Where = "carburettors 1 and 3", What = "Spindles worn past use", Detail = "0.16 to 0.19 mm against 0.10.", Decision = "Two spindles on order." })
            .Add(new PartLine { What = "two spindles", Quantity = "2", State = PartState.Ordered, OrderedOn = script.Ago(8), PromisedFor = script.Today.AddDays(2), Price = 118 })
            .Work("Everything else clean and bagged", "Ready for the spindles.");
    }

    private static void Dunlin(Script script)
    {
        var cured = new DateTimeOffset(script.Today.AddDays(1), new TimeOnly(15, 0), TimeSpan.Zero);
        var visit = In(script, "dunlin", 5, new Visit { Complaint = "Filters block every hundred miles.", Scope = "Line the tank.", EstimateHours = 12, StopAndAsk = 300, OdometerIn = 20555, Fuel = "E5", WaitsOn = WaitsOn.Clock, WaitingFor = "the tank lining to cure", WaitingSince = script.Ago(2), WaitingUntil = cured });
        Ready(visit);
        visit.Read(Moment.AsFound, Cast.Strobe, ("idleSpeed", "car", "780")).Close(5)
            .On(Stage.Storage, 2, Cast.Kerr).Begin()
            .Read(Moment.AsFound, Cast.Can, ("drained", "tank:1", "12"))
            .Read(Moment.AsFound, null, ("fuelAppearance", "tank:1", "rust or dirt"), ("tankInside", "tank:1", "scale"), ("tankTest", "tank:1", "water and dye"))
            .Work("Tank de-rusted and lined", "72 hours at 18 °C before it takes fuel.");
    }
}
