using Tickover.Reports.HandOver.Parts;
using Tickover.Reports.Paper;
using Tickover.Workshop.JetFittings;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.HandOver.Card;

/// <summary>What the marks on figures mean, what is not known, the way back to the record, and the log of changes.</summary>
internal static class CardFoot
{
    private const int MostWanting = 6;                     // named: the log of changes below needs the room more

    internal static IEnumerable<Block> Of(Telling t, CardFigures figures)
    {
        yield return t.Note(string.Join(' ', Notes(t, figures)));
        if (t.Settings.Address.Length > 0)
        {
            yield return new QrLink(t.Settings.Address, t.Say("The record of this visit. Stop and call us if you smell petrol, see a drip, or the throttle does not snap shut."));
        }

        yield return new Heading(2, t.Say("Changes to this car"));
        yield return t.TableOr("No change was noted.", "Changes", [new Column("Date"), new Column("What changed"), new Column("Why"), new Column("Result, or how to reverse it")], [.. Changes(t)]);
    }

    private static IEnumerable<string> Notes(Telling t, CardFigures figures)
    {
        yield return "Bold: as left.";
        if (figures.AnyStar)
        {
            yield return "* As found, not moved on this visit.";
        }

        if (figures.AnyDagger)
        {
            yield return "\u2020 From the car\u2019s description, not measured on this visit.";
        }

        var instruments = t.Comparisons.SelectMany(c => c.Rows).Select(r => (r.AsLeft ?? r.AsFound)?.Instrument).OfType<Instrument>().Distinct()
            .Where(i => i.GoodTo.Length > 0).Select(i => $"{i.Name} {i.GoodTo}").ToList();
        if (instruments.Count > 0)
        {
            yield return $"Good to: {string.Join(", ", instruments)}.";
        }

        if (figures.Wanting.Count > 0)
        {
            var wanting = figures.Wanting.Distinct(StringComparer.Ordinal).Select(Small).ToList();
            var more = wanting.Count > MostWanting + 1 ? $" and {wanting.Count - MostWanting} more" : string.Empty;
            yield return $"Not in the record: {string.Join(", ", more.Length > 0 ? wanting.Take(MostWanting) : wanting)}{more}.";
        }
    }

    // "CO at idle" and "λ at idle" keep their letters
    private static string Small(string label) => label.Length > 1 && char.IsLower(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;

    private static IEnumerable<IReadOnlyList<Prose>> Changes(Telling t)
    {
        var notes = t.Record.Notes.Where(n => n.Kind == WorkKind.Changed).Select(n => (n.On, What: n.What, n.Why, Result: n.Further));
        var fittings = JetStory.Of(t.Record).Fittings;
        var fitted = fittings.Select(f => (f.Fitting.On, What: PaperText.Capital(RoadJetsPart.Changes(f.Fitting)), Why: f.Fitting.Choice, Result: Result(f)));
        var documents = t.Record.Descriptions.Skip(1).Where(d => !fittings.Any(f => f.Fitting.Description == d.Id)).Select(d => (On: d.Since, What: "Car described anew", Why: d.Reason, Result: ""));
        return notes.Concat(fitted).Concat(documents).OrderByDescending(c => c.On).Select(c => (IReadOnlyList<Prose>)
            [Prose.Of(t.ShortDay(c.On)), Prose.Of(c.What), Prose.Of(c.Why.Length > 0 ? c.Why : "not noted"), Prose.Of(c.Result.Length > 0 ? c.Result : "not noted")]);
    }

    private static string Result(FittingStory story)
    {
        var fitting = story.Fitting;
        var expected = $"Expected {RoadJetsPart.Share(fitting.Share)} in target ({RoadJetsPart.Share(fitting.ShareLowest)} to {RoadJetsPart.Share(fitting.ShareHighest)})";
        return story.Proof is { } run ? $"{expected}; {run.InTarget} of {run.Readings} readings were" : $"{expected}; not driven since";
    }
}
