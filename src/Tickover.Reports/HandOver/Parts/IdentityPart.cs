using Tickover.Reports.Paper;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>1: the car, the days, the way driven, who did the work; the complaint in the owner's words.</summary>
internal static class IdentityPart
{
    internal static IEnumerable<Block> Of(Telling t)
    {
        var car = t.Record.Car;
        yield return new Masthead($"Your {car.Name}", t.Say("What was wrong, what we did, how to live with it"), [.. new[] { t.House.Name, t.Stay(), t.Odometer() }.Where(l => l.Length > 0)]);
        yield return new Paragraph(Told(t)) { Voice = Voice.Lead };
        yield return new Heading(2, t.Say("Your car and this visit"));
        yield return new Facts([.. Entries(t).Where(e => e.Value.Length > 0).Select(e => new Fact(t.Say(e.Name), Prose.Of(e.Value)))]);
    }

    private static Prose Told(Telling t)
    {
        var complaint = t.Visit.Complaint.Trim();
        var said = complaint.Length == 0 ? t.Prose("No complaint was noted.") : t.Prose("You told us: ").ThenItalic($"\u201c{complaint}\u201d");
        return t.Visit.Summary.Trim().Length > 0 ? said.Sentence(t.Visit.Summary) : said;
    }

    private static IEnumerable<(string Name, string Value)> Entries(Telling t)
    {
        var (car, visit) = (t.Record.Car, t.Visit);
        yield return ("Registration", car.Registration);
        yield return ("Chassis number", car.ChassisNumber);
        yield return ("Built", car.Year?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "");
        yield return ("Owner", t.Record.Owner?.Name ?? "not noted");
        yield return ("Visit", $"{visit.Number}, {t.Stay()}; {t.Odometer()}");
        yield return ("Work done by", Workers(t));
        yield return ("The story so far", visit.Story);
        yield return ("What you asked for", visit.Wishes);
        yield return ("Work agreed", visit.Scope.Length == 0 ? "not noted" : visit.ScopeAgreed.Length == 0 ? visit.Scope : $"{visit.Scope} ({visit.ScopeAgreed})");
        yield return ("Workshop", string.Join(", ", new[] { t.House.Name, t.House.Address.ReplaceLineEndings(", "), t.House.Telephone }.Where(p => p.Length > 0)));
    }

    private static string Workers(Telling t)
    {
        var record = t.Record;
        var people = record.Times.Select(l => l.Person).Concat(record.Readings.Select(r => r.KeptBy)).Concat(record.SignOffs.Select(s => (Workshop.Visits.Id<Workshop.Visits.Person>?)s.Person))
            .Where(p => p is not null).Distinct().Select(t.Name).Distinct(StringComparer.Ordinal).ToList();
        return people.Count == 0 ? "not noted" : string.Join(", ", people);
    }
}
