using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests;

/// <summary>What a record has to do, on whatever database it lies.</summary>
/// <param name="home">Gives each test a record of its own.</param>
public abstract class RecordSuite(RecordHome home)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_visit_comes_back_with_everything_kept_in_it()
    {
        using var open = await OpenRecord.BeginAsync(home);
        var finding = open.Hose();
        await open.KeepAsync("found", finding);
        await open.KeepAsync(
            "more",
            new House { Id = House.TheOne, Name = "Saltmarsh Motor House", OwnAuthorities = new Dictionary<string, string>(StringComparer.Ordinal) { ["hotWork"] = "Ask the fire officer" } },
            open.Airflow(1, 3.9),
            new Photograph { Visit = open.Visit.Id, Finding = finding.Id, Caption = "the crack", Marks = [new PhotographMark(0.1, 0.2, 0.5, 0.6, "here")] },
            new PartLine { Visit = open.Visit.Id, What = "Hose", Price = 12.50m, Quantity = "1.5 m" },
            new TimeLine { Visit = open.Visit.Id, Minutes = 40, On = new DateOnly(2026, 11, 13), Person = open.Ruth.Id, What = "Survey" },
            new Approval { Visit = open.Visit.Id, Asked = "New tank or reline?", Price = 480m },
            new WorkNote { Visit = open.Visit.Id, What = "Hose renewed" },
            new SignOff { Visit = open.Visit.Id, Gate = Gate.BayReady, Check = "battery", Person = open.Ruth.Id },
            new CautionSeen { Visit = open.Visit.Id, Caution = "drain" },
            new StageMark { Id = StageMark.IdFor(open.Visit.Id, Stage.Arrival), Visit = open.Visit.Id, Stage = Stage.Arrival, State = StageState.Done },
            new Signature { Visit = open.Visit.Id, Person = open.Ruth.Id, For = "Account" },
            new CarDescription { Car = open.Car.Id, Since = new DateOnly(2026, 11, 12), Document = "{}" },
            new Component { Car = open.Car.Id, Kind = ComponentKind.Tank, Place = "left" });

        var visit = await open.LookAsync();

        Assert.Equal("Saltmarsh Motor House", visit.Workshop.House.Name);
        Assert.Equal("Ask the fire officer", visit.Workshop.House.OwnAuthorities["hotWork"]);
        Assert.Equal(open.Car.Name, visit.Car.Name);
        Assert.Equal(1, visit.Visit.Number);
        Assert.Equal(finding.Id, visit.Findings.Single().Id);
        Assert.Equal("3.9 kg/h", visit.Readings.Single().Typed);
        Assert.Equal(new DateTimeOffset(2026, 11, 25, 8, 30, 0, TimeSpan.Zero), visit.Readings.Single().TakenAt);
        Assert.Equal("here", visit.Photographs.Single().Marks.Single().Note);
        Assert.Equal(12.50m, visit.Parts.Single().Price);
        Assert.Equal(
            [1, 1, 1, 1, 1, 1, 1, 1, 1],
            [visit.Times.Count, visit.Approvals.Count, visit.Notes.Count, visit.SignOffs.Count, visit.Cautions.Count, visit.Stages.Count, visit.Signatures.Count, visit.Descriptions.Count, visit.Components.Count]);
        Assert.All(visit.Readings, r => Assert.Equal(3, r.Kept));
        Assert.Equal(open.Ruth.Id, visit.Notes.Single().KeptBy);
    }

    [Fact]
    public async Task Jets_fitted_come_back_as_kept_and_go_with_their_description_when_undone()
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepAsync("described", new CarDescription { Car = open.Car.Id, Since = new DateOnly(2026, 11, 12), Document = "{}" });
        var description = new CarDescription { Id = Id.New<CarDescription>(), Car = open.Car.Id, Since = new DateOnly(2026, 11, 13), Document = "{ }" };
        var fitting = new JetFitting
        {
            Visit = open.Visit.Id,
            On = new DateOnly(2026, 11, 13),
            Choice = "least effort",
            Description = description.Id,
            Share = 0.8,
            ShareLowest = 0.7,
            ShareHighest = 0.9,
            Parts = [new FittedPart("mainJet", "Main jet", "135", "140", 6)],
            Expected = [new ExpectedRegime("cruise", 0.98, 0.95, 1.01, 0.9)],
        };
        await open.KeepAsync("fitted", description, fitting);

        var kept = (await open.LookAsync()).Fittings.Single();
        Assert.Equal((0.8, description.Id, fitting.Parts[0], fitting.Expected[0]), (kept.Share, kept.Description, kept.Parts.Single(), kept.Expected.Single()));
        Assert.Equal(ActEnding.Refused, (await open.KeepAsync("nothing", new JetFitting { Visit = open.Visit.Id, Description = description.Id })).Ending);

        await open.UndoAsync();
        var undone = await open.LookAsync();
        Assert.Empty(undone.Fittings);
        Assert.Equal("{}", undone.Descriptions.Single().Document);
    }

    [Fact]
    public async Task What_was_turned_comes_back_as_kept_goes_when_undone_and_is_never_changed()
    {
        using var open = await OpenRecord.BeginAsync(home);
        var turn = new ScrewTurn { Visit = open.Visit.Id, Adjuster = "bypass:4", Turns = 0.125, Words = "by-pass screw 4: out \u215B", Advised = true, TakenAt = new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero) };
        var look = new ScrewTurn { Visit = open.Visit.Id, Kind = ScrewTurnKind.LookedAt, Adjuster = "stop:2", GapMillimetres = 0.15, Words = "stop 2, gap 0.15 mm" };
        await open.KeepAsync("turned", turn);
        await open.KeepAsync("looked", look);

        var kept = (await open.LookAsync()).ScrewTurns;
        Assert.Equal(["bypass:4", "stop:2"], kept.Select(t => t.Adjuster), StringComparer.Ordinal);
        Assert.Equal((0.125, true, turn.TakenAt, 0.15), (kept[0].Turns, kept[0].Advised, kept[0].TakenAt, kept[1].GapMillimetres!.Value));
        Assert.Equal(ActEnding.Refused, (await open.KeepAsync("other", kept[0] with { Turns = 0.25 })).Ending);
        Assert.Equal(ActEnding.Refused, (await open.KeepAsync("nothing", new ScrewTurn { Visit = open.Visit.Id, Adjuster = "bypass:4" })).Ending);
        Assert.Equal(ActEnding.Refused, (await open.KeepAsync("what", new ScrewTurn { Visit = open.Visit.Id, Turns = 0.5 })).Ending);

        await open.UndoAsync();
        Assert.Equal("bypass:4", Assert.Single((await open.LookAsync()).ScrewTurns).Adjuster);
    }

    [Fact]
    public async Task The_same_entry_sent_twice_is_kept_once()
    {
        using var open = await OpenRecord.BeginAsync(home);
        var act = new Act { Key = Guid.NewGuid(), Items = [open.Airflow(1, 3.9)], Words = "barrel 1, 3.9 kg/h", Visit = open.Visit.Id };

        var first = await open.Store.KeepAsync(act, Cancellation);
        var again = await open.Store.KeepAsync(act with { Items = [open.Airflow(1, 3.9)] }, Cancellation);

        Assert.Equal((ActEnding.Kept, ActEnding.KeptBefore), (first.Ending, again.Ending));
        Assert.Equal(first.Number, again.Number);
        Assert.Single((await open.LookAsync()).Readings);
    }

    [Fact]
    public async Task The_same_entry_sent_by_many_at_once_is_kept_once()
    {
        using var open = await OpenRecord.BeginAsync(home);
        var act = new Act { Key = Guid.NewGuid(), Items = [open.Airflow(1, 3.9)], Words = "barrel 1", Visit = open.Visit.Id };

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 16).Select(_ => Task.Run(() => open.Store.KeepAsync(act, Cancellation), Cancellation)));

        Assert.Single(outcomes, o => o.Ending == ActEnding.Kept);
        Assert.Equal(15, outcomes.Count(o => o.Ending == ActEnding.KeptBefore));
        Assert.Single((await open.LookAsync()).Readings);
    }

    [Fact]
    public async Task A_reading_is_struck_out_and_kept_again_but_never_changed()
    {
        using var open = await OpenRecord.BeginAsync(home);
        var wrong = open.Airflow(1, 39);
        await open.KeepAsync("barrel 1, 39 kg/h", wrong);
        var kept = (await open.LookAsync()).Readings.Single();

        var changed = await open.KeepAsync("changed", kept with { Typed = "3.9 kg/h" });
        var struck = await open.KeepAsync("struck and kept again", kept with { Removed = true }, open.Airflow(1, 3.9) with { Corrects = kept.Id });

        Assert.Equal(ActEnding.Refused, changed.Ending);
        Assert.Contains("is a fact", changed.Words, StringComparison.Ordinal);
        Assert.Equal(ActEnding.Kept, struck.Ending);
        var readings = (await open.LookAsync()).Readings;
        Assert.Equal([(true, "39 kg/h"), (false, "3.9 kg/h")], readings.Select(r => (r.Removed, r.Typed)));
    }

    [Fact]
    public async Task Two_tablets_that_change_different_fields_of_one_thing_both_win()
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepAsync("found", open.Hose());
        var seen = (await open.LookAsync()).Findings.Single();

        var one = await open.KeepFromAsync("left tablet", "decided", seen with { Decision = "Renew it" });
        var two = await open.KeepFromAsync("right tablet", "described", seen with { Detail = "Cracked at the clip" });

        Assert.Equal((ActEnding.Kept, ActEnding.Kept), (one.Ending, two.Ending));
        var now = await open.FindingAsync(seen);
        Assert.Equal(("Renew it", "Cracked at the clip", 3), (now.Decision, now.Detail, now.Version));
    }

    [Fact]
    public async Task Two_tablets_that_change_one_field_differently_are_told_and_nothing_is_overwritten()
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepAsync("found", open.Hose());
        var seen = (await open.LookAsync()).Findings.Single();

        await open.KeepAsync("decided", seen with { Decision = "Renew it" });
        var late = await open.KeepFromAsync("right tablet", "decided", seen with { Decision = "Leave it" });

        Assert.Equal(ActEnding.Clashed, late.Ending);
        var clash = Assert.Single(late.Clashes);
        Assert.Equal(("decision", "\"\"", "\"Renew it\"", "\"Leave it\"", "RH"), (clash.Field, clash.Was, clash.Theirs, clash.Yours, clash.By));
        Assert.Equal("Renew it", (await open.FindingAsync(seen)).Decision);
        var chosen = await open.KeepFromAsync("right tablet", "decided", (await open.FindingAsync(seen)) with { Decision = "Leave it" });
        Assert.Equal(ActEnding.Kept, chosen.Ending);
    }

    [Fact]
    public async Task Two_people_who_close_one_visit_are_told_of_each_other()
    {
        using var open = await OpenRecord.BeginAsync(home);
        var seen = (await open.LookAsync()).Visit;

        var same = await Task.WhenAll(
            open.KeepAsync("closed", seen with { LeftOn = new DateOnly(2026, 12, 2), OdometerOut = 48262 }),
            open.KeepFromAsync("office", "closed", seen with { LeftOn = new DateOnly(2026, 12, 2), OdometerOut = 48262 }));
        var other = await open.KeepFromAsync("office", "closed", seen with { LeftOn = new DateOnly(2026, 12, 3) });

        Assert.All(same, o => Assert.Equal(ActEnding.Kept, o.Ending));
        Assert.Equal(ActEnding.Clashed, other.Ending);
        Assert.Contains("2026-12-02", other.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_tablets_that_begin_one_stage_at_once_make_one_mark()
    {
        using var open = await OpenRecord.BeginAsync(home);
        var mark = new StageMark { Id = StageMark.IdFor(open.Visit.Id, Stage.Gauge), Visit = open.Visit.Id, Stage = Stage.Gauge, State = StageState.Begun };

        await open.KeepFromAsync("left tablet", "begun", mark);
        var second = await open.KeepFromAsync("right tablet", "begun", mark with { Note = "left tank first" });

        Assert.Equal(ActEnding.Kept, second.Ending);
        Assert.Equal("left tank first", Assert.Single((await open.LookAsync()).Stages).Note);
    }

    [Fact]
    public async Task Undo_steps_back_one_act_at_a_time_and_says_which_and_redo_steps_forth()
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepAsync("found the hose", open.Hose());
        var seen = (await open.LookAsync()).Findings.Single();
        await open.KeepAsync("barrel 4, 3.9 kg/h", open.Airflow(4, 3.9));
        await open.KeepAsync("hose renewed", seen with { State = FindingState.PutRight });

        Assert.Equal("Undone: hose renewed", (await open.UndoAsync()).Words);
        Assert.Equal(FindingState.Open, (await open.FindingAsync(seen)).State);
        Assert.Equal("Undone: barrel 4, 3.9 kg/h", (await open.UndoAsync()).Words);
        Assert.True((await open.LookAsync()).Readings.Single().Removed);
        Assert.Equal("Done again: barrel 4, 3.9 kg/h", (await open.RedoAsync()).Words);
        Assert.False((await open.LookAsync()).Readings.Single().Removed);
        Assert.Equal("Done again: hose renewed", (await open.RedoAsync()).Words);
        Assert.Equal(FindingState.PutRight, (await open.FindingAsync(seen)).State);
        Assert.Equal(ActEnding.Nothing, (await open.RedoAsync()).Ending);
        Assert.Equal("Undone: hose renewed", (await open.UndoAsync()).Words);
    }

    [Fact]
    public async Task Something_new_ends_what_can_be_done_again()
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepAsync("found the hose", open.Hose());
        await open.UndoAsync();
        await open.KeepAsync("barrel 4", open.Airflow(4, 3.9));

        Assert.Equal(ActEnding.Nothing, (await open.RedoAsync()).Ending);
    }

    [Fact]
    public async Task Undo_takes_back_what_this_tablet_did_and_leaves_what_others_did_since()
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepFromAsync("left tablet", "found", open.Hose());
        var seen = (await open.LookAsync()).Findings.Single();
        await open.KeepFromAsync("left tablet", "decided", seen with { Decision = "Renew it" });
        await open.KeepFromAsync("right tablet", "described", (await open.FindingAsync(seen)) with { Detail = "Cracked" });

        await open.UndoAsync("left tablet");

        var now = await open.FindingAsync(seen);
        Assert.Equal(("", "Cracked"), (now.Decision, now.Detail));
    }

    [Fact]
    public async Task Undo_of_what_somebody_else_changed_since_is_told_and_changes_nothing()
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepFromAsync("left tablet", "found", open.Hose());
        var seen = (await open.LookAsync()).Findings.Single();
        await open.KeepFromAsync("left tablet", "decided", seen with { Decision = "Renew it" });
        await open.KeepFromAsync("right tablet", "decided", (await open.FindingAsync(seen)) with { Decision = "Leave it" });

        var undone = await open.UndoAsync("left tablet");

        Assert.Equal(ActEnding.Clashed, undone.Ending);
        Assert.Equal("Leave it", (await open.FindingAsync(seen)).Decision);
    }

    [Fact]
    public async Task What_was_taken_off_can_be_brought_back()
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepAsync("found", open.Hose());
        var seen = (await open.LookAsync()).Findings.Single();

        await open.KeepAsync("taken off", seen with { Removed = true });
        Assert.Empty((await open.LookAsync()).Findings);
        await open.KeepAsync("brought back", (await open.FindingAsync(seen)) with { Removed = false });

        Assert.Single((await open.LookAsync()).Findings);
    }

    [Fact]
    public async Task The_journal_tells_who_did_what_when_and_what_it_was_before()
    {
        var clock = new SetClock(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
        using var open = await OpenRecord.BeginAsync(home, clock);
        await open.KeepAsync("found", open.Hose());
        var seen = (await open.LookAsync()).Findings.Single();
        clock.Now = clock.Now.AddYears(-3); // somebody set the clock back
        await open.KeepAsync("decided", seen with { Decision = "Renew it" });

        var lines = await open.Store.JournalAsync(open.Visit.Id, 10, Cancellation);

        Assert.Equal("decided, found, car taken in", string.Join(", ", lines.Select(l => l.Words)), StringComparer.Ordinal);
        Assert.Equal([3L, 2L, 1L], lines.Select(l => l.Number));
        Assert.Equal(2023, lines[0].At.Year);
        Assert.All(lines, l => Assert.Equal((open.Ruth.Id, "bench"), (l.Person!.Value, l.Device)));
        var change = Assert.Single(lines[0].Changes);
        Assert.Contains("\"decision\":\"\"", change.Before, StringComparison.Ordinal);
        Assert.Contains("\"decision\":\"Renew it\"", change.After, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_search_finds_words_wherever_they_stand()
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepAsync("found", open.Hose(), new PartLine { Visit = open.Visit.Id, What = "Hose 100% ethanol-proof" }, new Owner { Name = "O'Dell_Marsh" });

        async Task<string> Kinds(string words) => string.Join(", ", (await open.Store.SearchAsync(words, Cancellation)).Select(f => f.Kind).Order(StringComparer.Ordinal));

        Assert.Equal("Finding, PartLine", await Kinds("HOSE"), StringComparer.Ordinal);
        Assert.Equal("Finding", await Kinds("perished tanks"), StringComparer.Ordinal);
        Assert.Equal("PartLine", await Kinds("100%"), StringComparer.Ordinal);
        Assert.Equal("Owner", await Kinds("o'dell_"), StringComparer.Ordinal);
        Assert.Equal("CustomerCar", await Kinds("ltn 280"), StringComparer.Ordinal);
        Assert.Empty(await Kinds("h%e"));
        Assert.Empty(await Kinds("  "));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("=1+cmd|' /C calc'!A0")]
    [InlineData("'; DROP TABLE Finding; --")]
    [InlineData("Ω λ ½ — שלום 日本 🚗")]
    public async Task Odd_words_are_kept_as_they_are(string words)
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepAsync("found", open.Hose() with { What = words });

        Assert.Equal(words, (await open.LookAsync()).Findings.Single().What, StringComparer.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_kept_is_refused_with_words_and_nothing_of_the_act_is_kept()
    {
        using var open = await OpenRecord.BeginAsync(home);
        RecordItem[] bad =
        [
            open.Hose() with { What = "" },
            open.Hose() with { What = "nul\0" },
            open.Hose() with { What = "half \ud83d of a sign" },
            open.Hose() with { What = new string('x', 8001) },
            open.Hose() with { Severity = (Severity)9 },
            open.Airflow(1, 3.9) with { Si = double.NaN },
            open.Airflow(1, 3.9) with { Typed = "", Si = null },
            open.Hose() with { Version = 4 },
            open.Hose() with { Id = default },
        ];
        foreach (var item in bad)
        {
            var outcome = await open.KeepAsync("bad", open.Airflow(2, 3.3), item);
            Assert.Equal(ActEnding.Refused, outcome.Ending);
            Assert.NotEmpty(outcome.Words);
        }

        var visit = await open.LookAsync();
        Assert.Empty(visit.Readings);
        Assert.Empty(visit.Findings);
    }

    [Fact]
    public async Task A_thing_of_a_visit_that_is_not_there_is_refused_in_words()
    {
        using var open = await OpenRecord.BeginAsync(home);

        var outcome = await open.KeepAsync("found", open.Hose() with { Visit = Id.New<Visit>() });

        Assert.Equal(ActEnding.Refused, outcome.Ending);
        Assert.Contains("visit", outcome.Words, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task The_record_says_how_much_is_in_it()
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepAsync("read", open.Airflow(1, 3.9), open.Airflow(2, 3.8));

        var size = await open.Store.SizeAsync(Cancellation);

        Assert.Equal((1, 1, 1, 2, 0), (size.Cars, size.Visits, size.OpenVisits, size.Readings, size.Photographs));
        Assert.NotNull(size.LastAct);
    }

    [Fact]
    public async Task A_car_shows_all_its_visits_oldest_first()
    {
        using var open = await OpenRecord.BeginAsync(home);
        await open.KeepAsync("earlier visit typed in later", new Visit { Car = open.Car.Id, ArrivedOn = new DateOnly(2018, 5, 3), LeftOn = new DateOnly(2018, 5, 20) });

        var history = (await open.Store.CarAsync(open.Car.Id, Cancellation))!;

        Assert.Equal([2018, 2026], history.Visits.Select(v => v.Visit.ArrivedOn.Year));
        Assert.Equal([2, 1], history.Visits.Select(v => v.Visit.Number));
        Assert.Single(await open.Store.OpenVisitsAsync(Cancellation));
    }
}
