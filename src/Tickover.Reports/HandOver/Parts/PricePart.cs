using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>11: time, parts and price against the estimate, with the owner's approvals; guarantee; what is kept.</summary>
internal static class PricePart
{
    internal static IEnumerable<Block> Of(Telling t)
    {
        yield return new Heading(2, t.Say("Time, parts and price"));
        yield return new Facts([.. Sums(t).Select(s => new Fact(t.Say(s.Name), Prose.Of(s.Value)))]);
        foreach (var block in Time(t).Concat(Parts(t)).Concat(Approvals(t)))
        {
            yield return block;
        }

        yield return new Heading(3, t.Say("Guarantee"));
        yield return t.House.Guarantee.Trim().Length > 0 ? Paragraph.Of(t.House.Guarantee) : t.Tell("No terms of guarantee were noted.");
        yield return new Heading(3, t.Say("What we keep of you and your car"));
        yield return t.House.Privacy.Trim().Length > 0
            ? Paragraph.Of(t.House.Privacy)
            : t.Tell("What is kept of owners and photographs, and for how long, was not noted. Ask us.");
    }

    private static IEnumerable<(string Name, string Value)> Sums(Telling t)
    {
        var visit = t.Visit;
        var priced = t.Record.Parts.Where(p => p.Price is not null).ToList();
        yield return ("Estimate", (visit.Estimate, visit.EstimateHours) switch
        {
            ({ } sum, { } hours) => $"{t.Money(sum)}, {hours:0.#} h",
            ({ } sum, null) => t.Money(sum),
            (null, { } hours) => $"{hours:0.#} h; no price was noted",
            _ => "no estimate was noted",
        });
        yield return ("Stop and ask beyond", visit.StopAndAsk is { } stop ? t.Money(stop) : "no sum was agreed");
        yield return ("Time spent", t.Record.Times.Count == 0 ? "no time was noted" : Telling.Hours(t.Record.Times.Sum(l => l.Minutes)));
        yield return ("Parts", priced.Count == 0 ? "no price was noted" : t.Money(priced.Sum(p => p.Price!.Value)));
        var extra = t.Record.Approvals.Where(a => a is { Answer: ApprovalAnswer.Yes, Price: not null }).ToList();
        yield return ("Extras you agreed to", extra.Count == 0 ? "none with a price" : t.Money(extra.Sum(a => a.Price!.Value)));
        yield return ("Price of the time", "not part of this record; see the invoice");
    }

    private static IEnumerable<Block> Time(Telling t)
    {
        var rows = t.Record.Times.GroupBy(l => l.Stage).OrderBy(g => g.Key).Select(g => (IReadOnlyList<Prose>)
        [
            t.Prose(g.Key.Words()), Prose.Of(string.Join(", ", g.Select(l => l.Person is null ? "name not noted" : t.Name(l.Person)).Distinct(StringComparer.Ordinal))),
            Prose.Of(string.Join("; ", g.Select(l => l.What.Trim()).Where(w => w.Length > 0).Distinct(StringComparer.Ordinal))), Prose.Of(Telling.Hours(g.Sum(l => l.Minutes))),
        ]).ToList();
        if (rows.Count > 0)
        {
            yield return new Heading(3, t.Say("Time by stage"));
            yield return t.TableOr("", "Time by stage", [new Column("Stage"), new Column("Who"), new Column("What"), Column.OfFigures("Time")], rows);
        }
    }

    private static IEnumerable<Block> Parts(Telling t)
    {
        var rows = t.Record.Parts.Select(p => (IReadOnlyList<Prose>)
            [Prose.Of(p.What), Prose.Of(p.Reference), Prose.Of(p.Quantity), Prose.Of(p.Price is { } price ? t.Money(price) : "not noted")]).ToList();
        if (rows.Count > 0)
        {
            yield return new Heading(3, t.Say("Parts and prices"));
            yield return t.TableOr("", "Parts and prices", [new Column("Part"), new Column("Reference"), Column.OfFigures("How many"), Column.OfFigures("Price")], rows);
        }
    }

    private static IEnumerable<Block> Approvals(Telling t)
    {
        yield return new Heading(3, t.Say("What we asked you, and what you said"));
        yield return t.TableOr(
            "No question to you was noted.", "Questions and answers", [new Column("We asked"), Column.OfFigures("Extra price"), new Column("You said")],
            [.. t.Record.Approvals.Select(a => (IReadOnlyList<Prose>)
            [
                Prose.Of($"{a.Asked} ({t.ShortDay(a.AskedOn)})"), Prose.Of(a.Price is { } price ? t.Money(price) : "none named"), Answer(t, a),
            ])]);
    }

    private static Prose Answer(Telling t, Approval approval)
    {
        var said = approval.Answer switch
        {
            ApprovalAnswer.Yes => Prose.Bold(t.Say("Yes")),
            ApprovalAnswer.No => Prose.Bold(t.Say("No")),
            _ => t.Prose("No answer yet"),
        };
        said = approval.AnsweredOn is { } day ? said.Then($", {t.ShortDay(day)}") : said;
        return approval.AnswerWords.Trim().Length > 0 ? said.Then($": {approval.AnswerWords.Trim()}") : said;
    }
}
