using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>3: what was done, stage by stage, with parts, tests of the tanks, and the checks that were signed or passed over.</summary>
internal static class DonePart
{
    private static readonly string[] TankTests = ["tankInside", "tankWall", "pitDepth", "tankTest", "tankTestPressure", "tankTestTime", "tankPressureLoss", "tankDecision"];

    internal static IEnumerable<Block> Of(Telling t)
    {
        yield return new Heading(2, t.Say("What we did"));
        var notes = t.Record.Notes.Where(n => n.Kind == WorkKind.Done).ToList();
        if (notes.Count == 0)
        {
            yield return t.Tell("No work was noted in words.");
        }

        foreach (var stage in notes.GroupBy(n => n.Stage).OrderBy(s => s.Key))
        {
            yield return new Heading(3, t.Say(stage.Key.Words()));
            yield return new Items([.. stage.Select(n => Prose.Empty.Sentence(n.What).Sentence(n.Why).Sentence(n.Further))]);
        }

        foreach (var block in PartsFitted(t).Concat(Tanks(t)).Concat(Checks(t)).Concat(Photographs(t)))
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> PartsFitted(Telling t)
    {
        yield return new Heading(3, t.Say("Parts fitted"));
        var parts = t.Record.Parts.Where(p => p.State == PartState.Fitted).ToList();
        yield return t.TableOr(
            "No parts were noted as fitted.", "Parts fitted",
            [new Column("Part"), new Column("Maker\u2019s reference, standard or date"), Column.OfFigures("How many"), new Column("Fitted"), new Column("Old part")],
            [.. parts.Select(p => (IReadOnlyList<Prose>)
            [
                Prose.Bold(p.What), Prose.Of(Or(p.Reference)), Prose.Of(p.Quantity), Prose.Of(p.FittedOn is { } day ? t.ShortDay(day) : "day not noted"), Prose.Of(Or(p.OldPart)),
            ])]);
    }

    private static IEnumerable<Block> Tanks(Telling t)
    {
        var rows = TankTests.Select(t.Compared).OfType<Workshop.Visits.Measures.MeasureComparison>()
            .SelectMany(c => c.Rows.Select(r => (IReadOnlyList<Prose>)
            [
                t.Prose(c.Measure.Label), Prose.Of(t.Where(r.Place)), Prose.Of(Dash(t.Value(c.Measure, r.AsFound))), Prose.Of(Dash(t.Value(c.Measure, r.AsLeft))), Prose.Of(t.Say(Dash(c.Measure.Limit?.Text ?? ""))),
            ])).ToList();
        if (rows.Count > 0)
        {
            yield return new Heading(3, t.Say("The tanks: method and results"));
            yield return t.TableOr("", "Tests of the tanks", [new Column("Test"), new Column("Tank"), new Column("As found"), new Column("As left"), new Column("Accepted")], rows);
        }
    }

    private static IEnumerable<Block> Checks(Telling t)
    {
        yield return new Heading(3, t.Say("Checks before each step"));
        var gates = GateCatalogue.All.Select(g => GateStatus.Of(t.Record, g.Gate, t.Settings.On)).ToList();
        var overridden = gates.SelectMany(g => g.Overrides.Select(o => Prose.Bold(t.Say($"Before {g.Definition.Before}, checks were passed over by {t.Name(o.SignOff.Person)} on {t.ShortDay(o.SignOff.On)}."))
            .Then($" {t.Say("Reason:")} ").Then(PaperText.Sentence(o.SignOff.Override)))).ToList();
        if (overridden.Count > 0)
        {
            yield return new Items(overridden);
        }

        var signed = t.Record.SignOffs.Count(s => s.Override.Length == 0);
        yield return t.Tell(signed == 0 ? "No check was signed." : $"{(signed == 1 ? "One check was" : $"{signed} checks were")} signed before fuel was touched, the engine ran or the car went on the road. They are listed at the end.");
    }

    private static IEnumerable<Block> Photographs(Telling t)
    {
        var known = t.Record.Findings.Select(f => f.Id).ToHashSet();
        var shown = t.Record.Photographs.Where(p => p.InHandOver && (p.Finding is not { } id || !known.Contains(id))).ToList();
        if (shown.Count > 0)
        {
            yield return new Heading(3, t.Say("Photographs of the work"));
            yield return new Photos([.. shown.Select(p => Pictures.Of(t, p, null))]);
        }
    }

    private static string Dash(string text) => text.Length > 0 ? text : "\u2013";

    private static string Or(string text) => text.Trim().Length > 0 ? text : "not noted";
}
