using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Demonstration;

/// <summary>The first visit of the Tern, three years before: balance and mixture only, for the drift since.</summary>
internal static class TernEarlier
{
    public const string Name = "tern-2800/first";

    public static void Play(Script script)
    {
        var visit = new VisitScript(script, Name, 0).On(Stage.Arrival, 1126, Cast.Hale).Open(new Visit
        {
            Car = Named.Of<CustomerCar>("tern-2800"),
            Owner = Named.Of<Owner>("tern-2800"),
            ArrivedOn = script.Ago(1126),
            DueOn = script.Ago(1122),
            LeftOn = script.Ago(1123),
            Complaint = "Idles like a sack of spanners since the club run.",
            Summary = "Two link rods had been bent to make the idle even; with straight rods all six barrels could be balanced.",
            Scope = "Balance and idle mixture.",
            ScopeAgreed = "by telephone, noted the same day",
            EstimateHours = 4,
            OdometerIn = 44120,
            OdometerOut = 44139,
            Fuel = "E5",
        });
        Run(visit);
        visit.On(Stage.HandOver, 1123, Cast.Hale).Add(new Signature { For = "Work done and account written" }).Close(1123);
    }

    private static void Run(VisitScript visit) => visit
        .On(Stage.Arrival, 1126, Cast.Birch)
        .Sign("leaks", "0.23 bar for 10 min, dry by torch and paper")
        .Sign("throttle-free", "ten of ten, all six plates on their stops")
        .Sign("ventilation", "extraction on both pipes, doors open, alarm tested")
        .Round("idleAirflow", Moment.AsFound, Cast.Air, 860, "3.6", "4.1", "4.4", "4.2", "3.5", "3.7")
        .Read(Moment.AsFound, Cast.Strobe, ("idleSpeed", "car", "860"))
        .Read(Moment.AsFound, Cast.Lambda, ("lambdaIdle", "bank:1", "0.86"))
        .Close(1126)
        .On(Stage.Balance, 1125, Cast.Birch)
        .Sign("ventilation", "extraction on both pipes, doors open, alarm tested")
        .Add(new Finding { Severity = Severity.Soon, State = FindingState.PutRight, Where = "linkage, front and rear", What = "Two link rods bent", Decision = "Straightened and set to length.", ApprovedBy = "Mrs Teal" })
        .Work("Link rods straightened, all six barrels balanced", "Bent rods loaded the plates.")
        .Round("idleAirflow", Moment.AsLeft, Cast.Air, 900, "3.9", "4.0", "4.1", "4.0", "3.9", "4.0")
        .Round("airflow2500", Moment.AsLeft, Cast.Air, 2500, "10.2", "10.3", "10.5", "10.4", "10.2", "10.3")
        .Read(Moment.AsLeft, Cast.Strobe, ("idleSpeed", "car", "900"), ("idleTiming", "bank:1", "10"))
        .Spend(150, "rods, three rounds")
        .Close(1125)
        .On(Stage.Mixture, 1124, Cast.Birch)
        .Read(Moment.AsLeft, Cast.Lambda, ("lambdaIdle", "bank:1", "0.91"))
        .Read(Moment.AsLeft, Cast.Gas, ("carbonMonoxide", "bank:1", "3.5"))
        .Spend(60, "idle mixture")
        .Close(1124);
}
