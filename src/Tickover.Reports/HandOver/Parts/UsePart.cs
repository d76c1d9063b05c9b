using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>8: how to use the car, as the workshop noted it.</summary>
internal static class UsePart
{
    internal static IEnumerable<Block> Of(Telling t)
    {
        yield return new Heading(2, t.Say("How to use the car"));
        var advice = t.Record.Notes.Where(n => n.Kind == WorkKind.Advice).ToList();
        yield return advice.Count == 0
            ? t.Tell("No advice on starting, idling, fuel or storage was noted.")
            : new Items([.. advice.Select(n => Prose.Bold(PaperText.Sentence(n.What)).Sentence(n.Why).Sentence(n.Further))]);
        yield return new Paragraph(t.Visit.Fuel.Trim().Length > 0 ? Prose.Bold(t.Say("Fuel: ")).Then(t.Visit.Fuel) : t.Prose("The fuel you mean to use was not noted."));
    }
}
