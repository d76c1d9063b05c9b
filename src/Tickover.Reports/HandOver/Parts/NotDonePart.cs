using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>7: what was not done and what follows from that; what could not be measured.</summary>
internal static class NotDonePart
{
    internal static IEnumerable<Block> Of(Telling t)
    {
        yield return new Heading(2, t.Say("What we did not do"));
        yield return t.TableOr(
            "No work was noted as advised and not done.", "Advised work", [new Column("Advised work"), new Column("How urgent"), new Column("If it is left")],
            [.. Advised(t)]);
        var left = t.Record.Stages.Where(s => s.State == StageState.NotNeeded).OrderBy(s => s.Stage).ToList();
        if (left.Count > 0)
        {
            yield return new Heading(3, t.Say("Stages that were no part of this visit"));
            yield return new Items([.. left.Select(s => Prose.Bold(t.Say(s.Stage.Words())).Then(s.Note.Length > 0 ? $": {s.Note}" : ""))]);
        }

        yield return new Heading(3, t.Say("What we could not measure"));
        var missing = Missing(t).ToList();
        yield return missing.Count == 0 ? t.Tell("Nothing was noted as impossible to measure.") : new Items(missing);
    }

    private static IEnumerable<IReadOnlyList<Prose>> Advised(Telling t)
    {
        foreach (var note in t.Record.Notes.Where(n => n.Kind == WorkKind.NotDone))
        {
            yield return [Prose.Bold(note.What), Prose.Of(note.Further.Length > 0 ? note.Further : "not noted"), Prose.Of(note.Why.Length > 0 ? note.Why : "not noted")];
        }

        foreach (var finding in t.Record.Findings.Where(f => f.State != FindingState.PutRight).OrderBy(f => f.Severity))
        {
            yield return [Prose.Bold(PaperText.Capital(finding.What)), Prose.Marked(finding.Severity, SeverityMark.Word(finding.Severity)), t.Prose("See what we found.").Sentence(finding.Decision)];
        }

        foreach (var part in t.Record.Parts.Where(p => p.State != PartState.Fitted))
        {
            var state = part.State switch
            {
                PartState.ToOrder => "To be ordered",
                PartState.Ordered => part.PromisedFor is { } day ? $"Ordered, promised for {t.ShortDay(day)}" : "Ordered",
                _ => "Here, not fitted",
            };
            yield return [Prose.Bold(part.What), t.Prose(state), t.Prose("Part not fitted.")];
        }
    }

    private static IEnumerable<Prose> Missing(Telling t)
    {
        foreach (var note in t.Record.Notes.Where(n => n.Kind == WorkKind.NotMeasured))
        {
            yield return Prose.Bold(note.What).Then(note.Why.Length > 0 ? $": {note.Why}" : "");
        }

        foreach (var reading in Rounds.Valid(t.Record.Readings).Where(r => r.NoReading.Length > 0))
        {
            var label = MeasureCatalogue.Find(reading.Measure) is { } measure ? t.Label(measure) : reading.Measure;
            yield return Prose.Bold($"{label}, {t.Where(reading.Place)}").Then($": {reading.NoReading}");
        }

        foreach (var round in t.Comparisons.SelectMany(c => c.VoidRounds))
        {
            yield return Prose.Bold(t.Label(round.Measure)).Then($": {t.Say("a round does not count.")} {round.Why}");
        }
    }
}
