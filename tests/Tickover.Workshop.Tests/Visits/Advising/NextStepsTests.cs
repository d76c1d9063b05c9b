using Tickover.Workshop.Tests.Visits.Cautions;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Advising;
using Tickover.Workshop.Visits.Gates;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Visits.Advising;

public sealed class NextStepsTests
{
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 11, 0, 0, TimeSpan.Zero);

    /// <summary>Situations by name, with the first sentence to be said.</summary>
    public static TheoryData<string, string> Situations { get; } = new()
    {
        { "just in", "Read how she runs as found, before anything is touched" },
        { "smells of petrol on arrival", "Push it outdoors before anything else" },
        { "unsafe later on", "Put right before anything else: Brake pipe chafed through" },
        { "baseline read", "Begin Arrival" },
        { "arrival done", "Check and sign the place of the car" },
        { "storage begun in a bay made ready", "Go on with Storage: read Fuel drained" },
        { "no scope agreed", "Agree the scope in writing before going on" },
        { "parts beyond the limit", "Ask the owner before going on" },
        { "parts beyond the limit, and approved", "Go on with Storage: read Fuel drained" },
        { "hours beyond the estimate", "Ask the owner before going on" },
        { "two of three checks signed", "Sign the ventilation, then start the engine" },
        { "owner asked a week ago", "Ring Mrs Teal: new tank or reline" },
        { "part promised for the day after tomorrow", "Wait for Two spindles, promised for 27 Nov" },
        { "part overdue", "Ask where the parts are: Two spindles" },
        { "lining cures", "Leave the tank lining to cure until tomorrow 15:00" },
        { "lining has cured", "Look at the tank lining to cure: its time is up" },
        { "mixture in hand, map asks", "Try idle jet 55 in all six barrels" },
        { "jets changed after the round", "Read again: Air at idle" },
        { "needle not read as left", "Read as left: Fuel gauge shows" },
        { "nothing left but the paper", "Write in one paragraph what was found" },
        { "all done and signed", "Print the account and hand the car back" },
    };

    [Theory]
    [MemberData(nameof(Situations))]
    public void The_first_thing_said_fits_the_situation(string situation, string sentence)
    {
        var context = Context(situation);

        var steps = NextSteps.Of(context);

        Assert.Equal(sentence, steps[0].Sentence);
        Assert.InRange(steps.Count, 1, 2);
        Assert.EndsWith(".", steps[0].Why, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_record_gives_the_same_steps() => Assert.All(Situations, s =>
    {
        var context = Context(s.Data.Item1);
        Assert.Equal(string.Join('|', NextSteps.All(context).Select(a => a.Sentence)), string.Join('|', NextSteps.All(Context(s.Data.Item1)).Select(a => a.Sentence)));
    });

    [Fact]
    public void No_advice_calls_anything_safe() =>
        Assert.All(Situations.SelectMany(s => NextSteps.All(Context(s.Data.Item1))), a => Assert.All<string>([a.Sentence, a.Why, .. a.Evidence], t => Assert.DoesNotMatch(CalledSafe.Pattern(), t)));

    [Fact]
    public void What_can_hurt_stands_alone_and_a_second_step_is_of_another_sort()
    {
        Assert.Single(NextSteps.Of(Context("smells of petrol on arrival")));
        var steps = NextSteps.Of(Context("owner asked a week ago"));
        Assert.Equal(2, steps.Count);
        Assert.NotEqual(steps[0].Rank, steps[1].Rank);
    }

    [Fact]
    public void A_visit_that_is_over_asks_for_nothing() =>
        Assert.Empty(NextSteps.Of(new AdviceContext(Bench.Visit(Bench.Visit().Visit with { LeftOn = Bench.Today }), Now)));

    [Fact]
    public void Due_days_approvals_and_instruments_are_named_below_the_work()
    {
        var meter = new Instrument { Name = "airflow meter", DueOn = Bench.Today.AddDays(-3) };
        var record = Context("storage begun in a bay made ready").Record;
        record = record with
        {
            Visit = record.Visit with { DueOn = Bench.Today.AddDays(-1) },
            Workshop = record.Workshop with { Instruments = [meter] },
            Readings = [new Reading { Measure = "idleSpeed", Moment = Moment.AsFound, Instrument = meter.Id }],
            Approvals = [new Approval { Asked = "New hoses?", AskedOn = Bench.Today.AddDays(-2) }],
        };

        var all = NextSteps.All(new AdviceContext(record, Now)).Select(a => a.Sentence).ToList();

        Assert.Equal("Go on with Storage: read Fuel drained|Ring the owner: the day promised is gone|Get an answer: New hoses?|Compare the airflow meter with something better", string.Join('|', all));
    }

    [Fact]
    public void Every_key_reading_is_in_the_list_of_measures()
    {
        var keys = Route.Stages.SelectMany(KeyReadings.Of).Concat(KeyReadings.Baseline).Concat(KeyReadings.AsLeft);

        Assert.All(keys, k => Assert.NotNull(MeasureCatalogue.Find(k)));
    }

    private static AdviceContext Context(string situation) => new(Record(situation), Now, situation.Contains("map asks", StringComparison.Ordinal) ? new Map() : null);

    private static VisitRecord Record(string situation)
    {
        var record = Bench.Visit();
        return situation switch
        {
            "just in" => record,
            "smells of petrol on arrival" => record with { Findings = [Unsafe("Petrol smell at the rear, drip not yet found")] },
            "unsafe later on" => Storage(record) with { Findings = [Unsafe("Brake pipe chafed through")] },
            "baseline read" => Found(record, "idleSpeed"),
            "arrival done" => Found(Done(record, Stage.Arrival), "idleSpeed"),
            "storage begun in a bay made ready" => Storage(record),
            "no scope agreed" => Storage(record) with { Visit = record.Visit with { ScopeAgreed = "" } },
            "parts beyond the limit" => Spent(record),
            "parts beyond the limit, and approved" => Spent(record) with { Approvals = [new Approval { Answer = ApprovalAnswer.Yes, Price = 300 }] },
            "hours beyond the estimate" => Storage(record) with { Visit = record.Visit with { EstimateHours = 2 }, Times = [new TimeLine { Minutes = 121 }] },
            "two of three checks signed" => Sign(Done(record, Stage.Arrival, Stage.Storage, Stage.Gauge, Stage.Supply, Stage.StripDown, Stage.Build), Gate.EngineMayRun, 2),
            "owner asked a week ago" => Storage(record) with { Owner = new Owner { Name = "Mrs Teal" }, Visit = record.Visit with { WaitsOn = WaitsOn.Owner, WaitingFor = "new tank or reline", WaitingSince = Bench.Today.AddDays(-7) } },
            "part promised for the day after tomorrow" => Parts(record, 2),
            "part overdue" => Parts(record, -1),
            "lining cures" => Clock(record, Now.AddHours(28)),
            "lining has cured" => Clock(record, Now.AddHours(-1)),
            "mixture in hand, map asks" => Mixture(record),
            "jets changed after the round" => Mixture(Found(record, "idleAirflow")) with
            {
                Readings = [new Reading { Measure = "idleAirflow", Moment = Moment.AsLeft, Kept = 30 }],
                Parts = [new PartLine { Stage = Stage.StripDown, What = "Idle jets 55", State = PartState.Fitted, Kept = 40, Changed = 40 }],
                SignOffs = Overrides(50),
            },
            "needle not read as left" => Found(Done(record, [.. Route.Stages.SkipLast(1)]), "needleShown"),
            "nothing left but the paper" => Done(record, [.. Route.Stages.SkipLast(1)]),
            "all done and signed" => Done(record with { Visit = record.Visit with { Summary = "Done.", OdometerOut = 1 }, Signatures = [new Signature()] }, [.. Route.Stages.SkipLast(1)]),
            _ => throw new ArgumentOutOfRangeException(nameof(situation), situation, "No such situation."),
        };
    }

    private static Finding Unsafe(string what) => new() { What = what, Severity = Severity.Unsafe, Where = "rear", Kept = 5 };

    private static VisitRecord Done(VisitRecord record, params Stage[] stages) => record with { Stages = [.. stages.Select(s => new StageMark { Stage = s, State = StageState.Done, Kept = 2, Changed = 2 })] };

    private static VisitRecord Found(VisitRecord record, string measure) => record with { Readings = [new Reading { Measure = measure, Moment = Moment.AsFound, Kept = 3 }] };

    private static VisitRecord Storage(VisitRecord record)
    {
        var done = Found(Done(record, Stage.Arrival), "idleSpeed");
        return Sign(done with { Stages = [.. done.Stages, new StageMark { Stage = Stage.Storage, State = StageState.Begun, Kept = 4, Changed = 4 }] }, Gate.BayReady, 9);
    }

    private static VisitRecord Spent(VisitRecord record) => Storage(record) with
    {
        Visit = record.Visit with { StopAndAsk = 1000 },
        Parts = [new PartLine { Price = 1200, State = PartState.Ordered }],
    };

    private static VisitRecord Parts(VisitRecord record, int days) => Storage(record) with
    {
        Visit = record.Visit with { WaitsOn = WaitsOn.Parts },
        Parts = [new PartLine { What = "Two spindles", State = PartState.Ordered, OrderedOn = Bench.Today.AddDays(-8), PromisedFor = Bench.Today.AddDays(days) }],
    };

    private static VisitRecord Clock(VisitRecord record, DateTimeOffset until) => Storage(record) with
    {
        Visit = record.Visit with { WaitsOn = WaitsOn.Clock, WaitingFor = "the tank lining to cure", WaitingUntil = until },
    };

    private static VisitRecord Mixture(VisitRecord record)
    {
        var done = Done(record, Stage.Arrival, Stage.Storage, Stage.Gauge, Stage.Supply, Stage.StripDown, Stage.Build, Stage.Balance);
        return done with { Stages = [.. done.Stages, new StageMark { Stage = Stage.Mixture, State = StageState.Begun, Kept = 4, Changed = 4 }], SignOffs = Overrides(50) };
    }

    private static IReadOnlyList<SignOff> Overrides(long kept) =>
        [.. new[] { Gate.EngineMayRun, Gate.FitToTune }.Select(g => new SignOff { Gate = g, Override = "known", Person = Bench.Hand.Id, On = Bench.Today, Kept = kept })];

    private static VisitRecord Sign(VisitRecord record, Gate gate, int checks) => record with
    {
        SignOffs = [.. record.SignOffs, .. GateCatalogue.Of(gate).Checks.Take(checks).Select(c => new SignOff { Gate = gate, Check = c.Key, Person = Bench.Hand.Id, Seen = "seen", On = Bench.Today, Kept = 50 })],
    };

    private sealed class Map : IMixtureAdvice
    {
        public MixtureWords? Of(VisitRecord record) => new("Try idle jet 55 in all six barrels", "Too lean on a light throttle, 2,000 to 3,000 rpm.", []);
    }
}
