using Tickover.Reports.Paper;
using Tickover.Workshop.JetFittings;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>6: what is no longer as the maker left it, why, and the way back; which old parts go home with the car.</summary>
internal static class ChangedPart
{
    // Against what was in on arrival; whether that was the maker's own is for a note to say
    private static IEnumerable<IReadOnlyList<Prose>> Fitted(Telling t) => JetStory.Of(t.Record).Fittings.Select(f => (IReadOnlyList<Prose>)
    [
        Prose.Bold(t.Say(PaperText.Capital(RoadJetsPart.Changes(f.Fitting)))), t.Prose($"{PaperText.Capital(f.Fitting.Choice)}; see the road above"),
        t.Prose($"Fit again: {string.Join(", ", f.Fitting.Parts.Select(p => $"{p.Label.ToLowerInvariant()} {p.From}"))}"),
    ]);

    internal static IEnumerable<Block> Of(Telling t)
    {
        yield return new Heading(2, t.Say("What we changed from original"));
        yield return t.TableOr(
            "No change from original was noted.", "Changes from original", [new Column("What"), new Column("Why"), new Column("How to reverse it")],
            [.. Fitted(t), .. t.Record.Notes.Where(n => n.Kind == WorkKind.Changed).Select(n => (IReadOnlyList<Prose>)
            [
                Prose.Bold(n.What), Prose.Of(n.Why.Length > 0 ? n.Why : "not noted"), Prose.Of(n.Further.Length > 0 ? n.Further : "not noted"),
            ])]);
        var old = t.Record.Parts.Where(p => p.OldPart.Trim().Length > 0).ToList();
        yield return new Heading(3, t.Say("Old parts"));
        yield return old.Count == 0
            ? t.Tell("What became of old parts was not noted.")
            : new Items([.. old.Select(p => Prose.Of($"{p.What}: {p.OldPart}"))]);
    }
}
