using Tickover.Reports.HandOver;
using Tickover.Reports.Tests.Paper;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.Tests.HandOver;

/// <summary>What logged runs showed and which jets went in, on the account and on the set-up card.</summary>
public sealed class RoadJetsTests
{
    private static readonly DateOnly Before = Visits.Today.AddDays(-3);

    [Fact]
    public void The_account_tells_runs_as_arrived_and_as_left_with_target_spread_and_count()
    {
        var text = Account(Fitted(proved: true));

        Assert.Contains("Mixture on the road, and the jets", text, StringComparison.Ordinal);
        Assert.Contains("arrival 0 of 2 readings were in target. With the jets the car goes home with 2 of 2 readings were in target.", text, StringComparison.Ordinal);
        Assert.Contains("1.08 (1.06 to 1.10), 2 readings", text, StringComparison.Ordinal);
        Assert.Contains("0.98 (0.97 to 0.99), 2 readings", text, StringComparison.Ordinal);
        Assert.Contains("As arrived: before.csv of 29 Nov 2026", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_account_says_why_a_set_went_in_and_that_a_run_proved_it()
    {
        var text = Account(Fitted(proved: true));

        Assert.Contains("Main jet 135 140, new", text, StringComparison.Ordinal);
        Assert.Contains("Fitted on 30 Nov 2026: main jet 135 to 140. Why: best from the shelf, reckoned from before.csv. Expected: 84 % of driving in target (72 % to 93 %), where the jets before were expected to give 31 %.", text, StringComparison.Ordinal);
        Assert.Contains("Driven afterwards (after.csv of 1 Dec 2026): 2 of 2 readings were in target.", text, StringComparison.Ordinal);
        Assert.Contains("Fit again: main jet 135", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_run_afterwards_the_account_says_that_nothing_is_proved()
    {
        var text = Account(Fitted(proved: false));

        Assert.Contains("No run was logged with it afterwards, so this is not proved.", text, StringComparison.Ordinal);
        Assert.Contains("No run was logged with the jets the car goes home with, so what is expected of them is not proved.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_set_whose_description_was_undone_leaves_no_trace()
    {
        var record = Fitted(proved: false);
        var undone = record with { Descriptions = [.. record.Descriptions.SkipLast(1)], Readings = [.. record.Readings.SkipLast(6)], Runs = [] };

        foreach (var text in new[] { Account(undone), Card(undone) })
        {
            Assert.DoesNotContain("best from the shelf", text, StringComparison.Ordinal);
            Assert.DoesNotContain("140", text, StringComparison.Ordinal);
            Assert.DoesNotContain("on the road, and the jets", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_run_left_out_counts_nowhere_and_the_account_says_so()
    {
        var record = Fitted(proved: true);
        var text = Account(record with { Runs = [record.Runs[0] with { LeftOut = true }, record.Runs[1]] });

        Assert.Contains("One log is not counted", text, StringComparison.Ordinal);
        Assert.DoesNotContain("1.08 (1.06 to 1.10)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_card_gives_the_last_run_by_regime_with_day_log_and_jets()
    {
        var proved = Card(Fitted(proved: true));
        Assert.Contains("λ on the last logged run", proved, StringComparison.Ordinal);
        Assert.Contains("0.97 to 0.99", proved, StringComparison.Ordinal);
        Assert.Contains("after.csv of 1 Dec 2026: 2 of 2 readings in target, driven with the jets on this card.", proved, StringComparison.Ordinal);
        Assert.Contains("Expected 84 % in target (72 % to 93 %); 2 of 2 readings were", proved, StringComparison.Ordinal);

        var open = Card(Fitted(proved: false));
        Assert.Contains("before.csv of 29 Nov 2026: 0 of 2 readings in target, driven with other jets than these: main jet 135.", open, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_papers_stay_clean_and_the_card_on_one_sheet()
    {
        var record = Fitted(proved: true);
        var card = PaperShop.Write(SetUpCardDocument.Of(record, Visits.Settings));

        Assert.Equal(1, PaperShop.Pages(card));
        PaperShop.AssertClean(card);
        PaperShop.AssertClean(PaperShop.Write(HandOverDocument.Of(record, Visits.Settings)));
    }

    private static string Account(VisitRecord record) => Plain(PaperShop.Cells(PaperShop.Write(HandOverDocument.Of(record, Visits.Settings))));

    private static string Card(VisitRecord record) => Plain(PaperShop.Cells(PaperShop.Write(SetUpCardDocument.Of(record, Visits.Settings))));

    private static string Plain(string text) => text.Replace('\u00a0', ' ').Replace('\u202f', ' ');

    // A lean car with main jets 135, logged, given 140, and logged again.
    private static VisitRecord Fitted(bool proved)
    {
        var record = Visits.Demonstration() with { Runs = [] };
        var was = record.Descriptions[^1].Document;
        var now = CarDocument.Change(CarDocument.Read(was).Car!, "barrel.mainJet", "140").Car!.Document;
        var description = new CarDescription { Id = Id.New<CarDescription>(), Car = record.Car.Id, Visit = record.Visit.Id, Since = Before.AddDays(1), Document = now, Reason = "main jet 135 to 140: best from the shelf" };
        var fitting = new JetFitting
        {
            Id = Id.New<JetFitting>(),
            Visit = record.Visit.Id,
            On = Before.AddDays(1),
            Choice = "best from the shelf",
            Description = description.Id,
            Parts = [new FittedPart("mainJet", "Main jet", "135", "140", 6)],
            RestsOn = "before.csv",
            ShareBefore = 0.31,
            Share = 0.84,
            ShareLowest = 0.72,
            ShareHighest = 0.93,
        };
        RoadRun[] runs = [Run("before.csv", Before, was, 1.06, 1.10), Run("after.csv", Before.AddDays(2), now, 0.97, 0.99)];
        return record with { Descriptions = [.. record.Descriptions, description], Fittings = [fitting], Runs = proved ? runs : runs[..1], Readings = [.. record.Readings, .. Stamped(record)] };
    }

    private static IEnumerable<Reading> Stamped(VisitRecord record) => Enumerable.Range(1, 6).Select(b => new Reading
    {
        Id = Id.New<Reading>(),
        Visit = record.Visit.Id,
        Stage = Stage.Mixture,
        Measure = "mainJet",
        Place = Place.Read($"barrel:{b}")!.Value,
        Moment = Moment.AsLeft,
        Typed = "140",
        Si = 140e-5,
        Kept = 9000 + b,
    });

    private static RoadRun Run(string name, DateOnly on, string document, params double[] lambdas) => new()
    {
        Id = Id.New<RoadRun>(),
        Name = name,
        On = on,
        Document = document,
        Points = [.. lambdas.Select(l => new MixturePoint { Regime = Regime.Cruise, SpeedRpm = 2500, ThrottleDegrees = 25, Lambda = l, LambdaSigma = 0.01, Count = 50 })],
    };
}
