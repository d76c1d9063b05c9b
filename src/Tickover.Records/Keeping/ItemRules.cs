using System.Collections.Concurrent;
using System.Reflection;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Keeping;

/// <summary>What every item has to obey before it is kept, whatever page or program it comes from.</summary>
internal static class ItemRules
{
    /// <summary>Longest text of a field, in characters; a page of close writing.</summary>
    public const int LongestText = 8000;

    /// <summary>Longest car document, and longest note on the columns of a log.</summary>
    private const int LongestDocument = 1_000_000;

    /// <summary>More turns than any adjuster of a carburettor has from end to end.</summary>
    private const double MostTurns = 40;

    private static readonly DateOnly FirstDay = new(1885, 1, 1);

    private static readonly DateOnly LastDay = new(2199, 12, 31);

    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> Fields = new();

    /// <summary>Checks an item.</summary>
    /// <param name="item">The item.</param>
    /// <returns>Null where it may be kept, else what is wrong and what to do.</returns>
    public static string? Complaint(RecordItem item)
    {
        if (item.Key == Guid.Empty)
        {
            return "The entry has no number of its own. Send it from the page.";
        }

        if (RecordKinds.Find(RecordKinds.NameOf(item)) is null)
        {
            return "This is nothing the record keeps.";
        }

        foreach (var field in Fields.GetOrAdd(item.GetType(), type => type.GetProperties()))
        {
            if (Complaint(item, field) is { } complaint)
            {
                return complaint;
            }
        }

        return OwnRule(item);
    }

    private static string? Complaint(RecordItem item, PropertyInfo field) => field.GetValue(item) switch
    {
        null when field.PropertyType == typeof(string) => $"{field.Name} is missing.",
        string text => Text(field.Name, text, Longest(item, field)),
        double number when !double.IsFinite(number) => $"{field.Name} is not a number.",
        Enum value when !Enum.IsDefined(value.GetType(), value) => $"{field.Name} is none of the words known here.",
        DateOnly day when field.Name.EndsWith("On", StringComparison.Ordinal) && day != default && (day < FirstDay || day > LastDay) => $"{field.Name}: {day:yyyy-MM-dd} is no day a car was looked at.",
        _ => null,
    };

    private static int Longest(RecordItem item, PropertyInfo field) =>
        item is LoggerLayout || string.Equals(field.Name, nameof(CarDescription.Document), StringComparison.Ordinal) ? LongestDocument : LongestText;

    private static string? Text(string field, string text, int longest)
    {
        if (text.Length > longest)
        {
            return $"{field} is longer than {longest} characters. Shorten it, or put the rest into a note of its own.";
        }

        return text.Any(c => char.IsSurrogate(c)) && !IsWellFormed(text) || text.Any(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t'))
            ? $"{field} holds characters that cannot be written. Type it again."
            : null;
    }

    private static bool IsWellFormed(string text)
    {
        for (var k = 0; k < text.Length; k++)
        {
            if (char.IsHighSurrogate(text[k]) && k + 1 < text.Length && char.IsLowSurrogate(text[k + 1]))
            {
                k++;
            }
            else if (char.IsSurrogate(text[k]))
            {
                return false;
            }
        }

        return true;
    }

    private static string? OwnRule(RecordItem item) => item switch
    {
        Reading { Si: null, Typed: "", NoReading: "" } => "There is neither a reading nor a reason why there is none. Type one of them.",
        Reading { Measure: "" } => "The reading does not say what was measured.",
        TimeLine { Minutes: <= 0 or > 24 * 60 } => "The time is not between 1 minute and 24 hours.",
        Finding { What: "" } => "The finding has no words. Say what was found.",
        WorkNote { What: "" } => "The note is empty.",
        PartLine { What: "" } => "The part has no name.",
        Person { Initials.Length: < 2 or > 4 } => "Initials are two to four letters.",
        Person { Name: "" } => "The person has no name.",
        CustomerCar { Name: "" } => "The car has no name.",
        Owner { Name: "" } => "The owner has no name.",
        SignOff { Check: "", Override: "" } => "Neither a check nor a reason is given.",
        Approval { Asked: "" } => "The question is empty.",
        RoadRun { Name: "" } => "The run has no name.",
        RoadRun { Points: [] } => "The run has no points.",
        LoggerLayout { Headings: "" } or LoggerLayout { Layout: "" } => "The note on a logger's columns is empty.",
        StockJet { Count: < 0 or > 10_000 } => "The number on the shelf is not between 0 and 10,000.",
        Worksheet { Form: "" } or Worksheet { Document: "" } => "The worksheet is empty.",
        ScrewTurn { Kind: ScrewTurnKind.Turned, Turns: 0 } => "It does not say how far it was turned.",
        ScrewTurn { Turns: < -MostTurns or > MostTurns } => "No screw here goes that many turns.",
        ScrewTurn { Kind: ScrewTurnKind.Turned or ScrewTurnKind.LookedAt or ScrewTurnKind.CheckedFor, Adjuster: "" } => "It does not say what was turned or looked at.",
        JetFitting { Parts: [] } => "Nothing is named that was fitted.",
        JetFitting { Share: < 0 or > 1 } or JetFitting { ShareBefore: < 0 or > 1 } => "The share of driving is not between 0 and 1.",
        _ => null,
    };
}
