using Tickover.Records.Tests.Pictures;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Carrying;

/// <summary>A record with something of every kind in it, undone and done again, with a picture and a PIN.</summary>
internal static class FullRecord
{
    public const string Pin = "24681357";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public static async Task<OpenRecord> BeginAsync(RecordHome home)
    {
        var open = await OpenRecord.BeginAsync(home);
        var owner = new Owner { Name = "Edith Marlow", Telephone = "+44 20 7946 0000", Note = "=HYPERLINK(\"http://127.0.0.1\")" };
        var gauge = new Instrument { Name = "Airflow meter", GoodTo = "±0.25 kg/h" };
        var finding = open.Hose();
        var photograph = new Photograph { Visit = open.Visit.Id, Finding = finding.Id, Caption = "the crack, \"left\", λ", Marks = [new PhotographMark(0.1, 0.2, 0.5, 0.6, "here")] };
        var picture = await new PictureBook(open.Store).TakeInAsync(photograph.Id, Photographs.Jpeg(), Cancellation);
        photograph = photograph with { Hash = picture.Hash, Width = picture.Width, Height = picture.Height };
        await open.KeepAsync("workshop", new House { Id = House.TheOne, Name = "Saltmarsh Motor House", Address = "1 Quay\nSaltmarsh" }, owner, gauge);
        await open.KeepAsync("found", finding, photograph, open.Airflow(1, 3.9) with { Instrument = gauge.Id, EngineSpeedRpm = 850.5 });
        var description = new CarDescription { Car = open.Car.Id, Since = new DateOnly(2026, 11, 12), Document = Repository.Sample("tern-2800") };
        await open.KeepAsync(
            "more",
            new PartLine { Visit = open.Visit.Id, What = "Hose", Price = 12.50m, Quantity = "1.5 m" },
            new PartLine { Visit = open.Visit.Id, What = "Clips", Price = 12m },
            new TimeLine { Visit = open.Visit.Id, Minutes = 40, On = new DateOnly(2026, 11, 13), Person = open.Ruth.Id, What = "-Survey" },
            new Approval { Visit = open.Visit.Id, Asked = "New tank or reline?", Price = 480m },
            new WorkNote { Visit = open.Visit.Id, What = "Hose renewed", Why = "Perished <b>through</b>" },
            new SignOff { Visit = open.Visit.Id, Gate = Gate.BayReady, Check = "battery", Person = open.Ruth.Id },
            new CautionSeen { Visit = open.Visit.Id, Caution = "drain" },
            new StageMark { Id = StageMark.IdFor(open.Visit.Id, Stage.Arrival), Visit = open.Visit.Id, Stage = Stage.Arrival, State = StageState.Done },
            new Signature { Visit = open.Visit.Id, Person = open.Ruth.Id, For = "Account" },
            description,
            new RoadRun { Visit = open.Visit.Id, Name = "coast \"road\", λ.csv", On = new DateOnly(2026, 11, 14), Document = description.Document, Points = [new MixturePoint { Regime = Regime.Cruise, SpeedRpm = 2500, Lambda = 0.98, LambdaSigma = 0.01, Count = 50 }], Sheet = Sheet },
            new LoggerLayout { Id = LoggerLayout.IdFor("t|λ \"left\""), Headings = "t|λ \"left\"", Layout = "{}" },
            new StockJet { Id = StockJet.IdFor("mainJet", 140), Part = "mainJet", Size = 140, Count = 6 },
            new ScrewTurn { Visit = open.Visit.Id, Adjuster = "bypass:4", Turns = 0.125, Words = "Middle carburettor, rear barrel, by-pass screw: out \u215B", Advised = true, TakenAt = new DateTimeOffset(2026, 11, 14, 10, 0, 0, TimeSpan.Zero) },
            new ScrewTurn { Visit = open.Visit.Id, Kind = ScrewTurnKind.LookedAt, Adjuster = "stop:2", GapMillimetres = 0.15, Words = "Stop 2: gap 0.15 mm" },
            new Worksheet { Visit = open.Visit.Id, Stage = Stage.Balance, Form = "tickover-plan-1", Name = "dunlin \"plan\"", Document = "{ \"format\": \"tickover-plan-1\" }", On = new DateOnly(2026, 11, 14) },
            new JetFitting
            {
                Visit = open.Visit.Id,
                On = new DateOnly(2026, 11, 14),
                Choice = "least effort",
                Description = description.Id,
                Share = 0.8,
                Parts = [new FittedPart("mainJet", "Main jet", "135", "140", 6)],
                Expected = [new ExpectedRegime("cruise", 0.98, 0.95, 1.01, 0.9)],
            },
            new Component { Car = open.Car.Id, Kind = ComponentKind.Tank, Place = "left" });
        await open.KeepAsync("settled", (await open.FindingAsync(finding)) with { State = FindingState.PutRight, Decision = "renewed" });
        await open.UndoAsync();
        await open.RedoAsync();
        await open.KeepAsync("wrong", open.Airflow(2, 39));
        await open.UndoAsync();
        await new PinBook(open.Store).SetAsync(open.Ruth.Id, Pin, null, Cancellation);
        return open;
    }

    /// <summary>A second car with a visit, which the export of the first must not hold.</summary>
    public static async Task<CustomerCar> AddSecondCarAsync(OpenRecord open)
    {
        var owner = new Owner { Name = "Somebody Else" };
        var car = new CustomerCar { Name = "Samphire Gannet 1500", Slug = "samphire-gannet-1500", Owner = owner.Id };
        var visit = new Visit { Car = car.Id, ArrivedOn = new DateOnly(2026, 11, 20), Complaint = "Runs on." };
        await open.KeepAsync("second car", owner, car, visit, new Finding { Visit = visit.Id, What = "Float sticks" });
        return car;
    }

    private static LogSheet Sheet => new()
    {
        Form = "UTF-8",
        Columns = [new LogColumn { Name = "λ \"left\"", Place = 2, Taken = "lambda@1", Unit = "λ", Least = 0.7, Most = 1.3 }],
        Rows = 100,
        RowsKept = 98,
        LeftOut = [new LogRows("blank", 2)],
        Trace = new LogTrace { Seconds = [0, 0.1], SpeedRpm = [900, null], Lambdas = [new LogTraceLambda(1, [null, 0.98])], LeftOut = [new LogSpan(0, 0.1, "engine cold")] },
        Pump = new LogPump { Verdict = TipInVerdict.Late, Words = "late", Shots = [new LogShot(3, null, TipInVerdict.Late, "late", ["slack"], [])] },
    };
}
