using System.Collections;
using System.Globalization;
using System.Reflection;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Web.Papers;

/// <summary>Says in plain words what an act changed, field by field.</summary>
/// <param name="visit">The visit, which knows who and what the identifiers stand for.</param>
internal sealed class JournalWords(VisitRecord visit)
{
    private const int LongestText = 600;

    // Told elsewhere on the page, or of no use to a reader.
    private static readonly HashSet<string> Untold = new(StringComparer.Ordinal)
    {
        "Id", "Key", "Version", "Removed", "Kept", "Changed", "KeptAt", "KeptBy", "Visit", "Car", "Hash", "Width", "Height", "Si", "Round", "Slug", "Corrects", "Marks", "Sheet", "Points", "Layout",
    };

    /// <summary>What an act did to one item.</summary>
    public JournalEntry Of(JournalChange change)
    {
        var after = RecordKinds.Read(change.Kind, change.After);
        var before = change.Before is null ? null : RecordKinds.Read(change.Kind, change.Before);
        var fields = from property in after.GetType().GetProperties()
                     where !Untold.Contains(property.Name)
                     let was = before is null ? "" : Value(property, before)
                     let now = Value(property, after)
                     where !string.Equals(was, now, StringComparison.Ordinal)
                     select new JournalField(PaperWords.Split(property.Name), was, now);
        return new JournalEntry($"{Kind(change.Kind)}{What(before, after)}", [.. fields]);
    }

    /// <summary>What was taken off in this visit and has not come back.</summary>
    public static IReadOnlyList<JournalItem> TakenOff(IReadOnlyList<JournalLine> lines)
    {
        var latest = lines.OrderBy(l => l.Number).SelectMany(l => l.Changes).GroupBy(c => c.Key).Select(g => g.Last()).ToList();
        return
        [
            .. from change in latest
               let item = RecordKinds.Read(change.Kind, change.After)
               where item.Removed && item is not (SignOff or CautionSeen or Signature or Workshop.Visits.Visit or JetFitting or CarDescription)
               select new JournalItem(change.Kind, change.Key, item.Version, $"{Kind(change.Kind)}: {Name(item)}"),
        ];
    }

    /// <summary>What an item is called.</summary>
    public static string Name(RecordItem item) => item switch
    {
        Finding f => f.What,
        WorkNote n => n.What,
        PartLine p => p.What,
        TimeLine t => t.What.Length > 0 ? t.What : PaperWords.Time(t.Minutes),
        Approval a => a.Asked,
        Photograph { Caption.Length: > 0 } p => p.Caption,
        Component c => c.What,
        RoadRun r => r.Name,
        JetFitting f => string.Join(", ", f.Parts.Select(p => $"{p.Label.ToLowerInvariant()} {p.To}")),
        LoggerLayout => "as corrected",
        ScrewTurn t => t.Words,
        Worksheet { Name.Length: > 0 } s => s.Name,
        Reading r => $"{MeasureCatalogue.Find(r.Measure)?.Label ?? r.Measure}, {r.Place.Words().ToLowerInvariant()}, {r.Typed}",
        _ => "without a name",
    };

    private static string Kind(string kind) => kind switch
    {
        "PartLine" => "Part",
        "TimeLine" => "Time",
        "Approval" => "Question to the owner",
        "WorkNote" => "Note",
        "RoadRun" => "Road log",
        "StockJet" => "Shelf",
        "JetFitting" => "Jets fitted",
        "LoggerLayout" => "Columns of a logger",
        "ScrewTurn" => "Done while balancing",
        "StageMark" => "Stage",
        "SignOff" => "Check signed",
        "CautionSeen" => "Caution read",
        "CustomerCar" => "Car",
        "CarDescription" => "Description of the car",
        _ => PaperWords.Split(kind),
    };

    private static string What(RecordItem? before, RecordItem after) => (before?.Removed ?? false, after.Removed) switch
    {
        (false, true) => ", taken off",
        (true, false) => ", brought back",
        _ => before is null ? ", new" : "",
    };

    private string Value(PropertyInfo property, RecordItem item)
    {
        var text = property.GetValue(item) switch
        {
            null => "",
            string words => Written(property.Name, words),
            bool yes => yes ? "yes" : "no",
            Enum word => PaperWords.Split(word.ToString()),
            DateOnly day => day == default ? "" : Days.Long(day),
            DateTimeOffset moment => moment.ToLocalTime().ToString("d MMMM yyyy HH:mm", CultureInfo.InvariantCulture),
            Place place => place.Words(),
            IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
            IEnumerable several => string.Join(", ", several.Cast<object>()),
            var other => Named(other),
        };
        return text.Length > LongestText ? string.Concat(text.AsSpan(0, LongestText), "…") : text;
    }

    private static string Written(string field, string words) => field switch
    {
        "Document" when words.Length > 0 => string.Create(CultureInfo.InvariantCulture, $"a car document of {words.Split('\n').Length} lines"),
        "Measure" => MeasureCatalogue.Find(words)?.Label ?? words,
        _ => words,
    };

    // Numbers of other items, as what they stand for.
    private string Named(object id) => id switch
    {
        Id<Person> person => visit.Workshop.InitialsOf(person),
        Id<Owner> owner => visit.Owner?.Id == owner ? visit.Owner.Name : "another owner",
        Id<Finding> finding => visit.Findings.FirstOrDefault(f => f.Id == finding)?.What ?? "a finding taken off",
        Id<Instrument> instrument => visit.Workshop.Find(instrument)?.Name ?? "",
        _ => "",
    };
}
