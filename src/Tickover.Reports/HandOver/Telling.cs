using System.Globalization;
using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;


namespace Tickover.Reports.HandOver;

/// <summary>A visit's record as an account tells it: days, money, ways, figures and words in the house's manner.</summary>
internal sealed class Telling(VisitRecord record, HandOverSettings settings)
{
    private const char NoBreak = '\u00a0';
    private readonly Lazy<IReadOnlyList<MeasureComparison>> _comparisons = new(() => BeforeAndAfter.Of(record));

    internal VisitRecord Record => record;

    internal HandOverSettings Settings => settings;

    internal Visit Visit => record.Visit;

    internal House House => record.Workshop.House;

    internal string Language => House.Words == TradeWords.American ? "en-US" : "en-GB";

    /// <summary>Every measure with a reading as found or as left.</summary>
    internal IReadOnlyList<MeasureComparison> Comparisons => _comparisons.Value;

    internal MeasureComparison? Compared(string measure) => Comparisons.FirstOrDefault(c => string.Equals(c.Measure.Key, measure, StringComparison.Ordinal));

    /// <summary>One of our sentences in the house's words.</summary>
    internal string Say(string british) => TradeVocabulary.In(british, House.Words);

    internal Prose Prose(string british) => Paper.Prose.Of(Say(british));

    internal Paragraph Tell(string british) => new(Prose(british));

    internal Paragraph Note(string british) => new(Prose(british)) { Voice = Voice.Small };

    /// <summary>A day in full, such as "2 December 2026"; American: "December 2, 2026".</summary>
    internal string Day(DateOnly day) => day.ToString(House.Words == TradeWords.American ? "MMMM d, yyyy" : "d MMMM yyyy", CultureInfo.InvariantCulture).Replace(' ', NoBreak);

    /// <summary>A day in a table, such as "2 Dec 2026".</summary>
    internal string ShortDay(DateOnly day) => day.ToString(House.Words == TradeWords.American ? "MMM d, yyyy" : "d MMM yyyy", CultureInfo.InvariantCulture).Replace(' ', NoBreak);

    /// <summary>From and to as one text; open where the car has not left.</summary>
    internal string Stay()
    {
        var arrived = Visit.ArrivedOn;
        return Visit.LeftOn is not { } left ? $"here since {Day(arrived)}"
            : left == arrived ? Day(arrived)
            : left.Year == arrived.Year && House.Words == TradeWords.British ? $"{arrived.ToString("d MMMM", CultureInfo.InvariantCulture)} to {Day(left)}"
            : $"{Day(arrived)} to {Day(left)}";
    }

    /// <summary>An odometer reading in the car's unit, such as "48,210 miles".</summary>
    internal string Way(int odometer) => $"{odometer.ToString("#,0", CultureInfo.InvariantCulture)}\u00a0{WayUnit}";

    internal string WayUnit => record.Car.OdometerUnit == OdometerUnit.Miles ? "miles" : "km";

    internal string Odometer() => (Visit.OdometerIn, Visit.OdometerOut) switch
    {
        ({ } come, { } gone) => $"{come.ToString("#,0", CultureInfo.InvariantCulture)} to {Way(gone)}",
        ({ } come, null) => $"{Way(come)} on arrival",
        (null, { } gone) => $"{Way(gone)} on leaving",
        _ => "odometer not noted",
    };

    /// <summary>A sum with its sign or code, such as "£1,240.00".</summary>
    internal string Money(decimal sum)
    {
        var text = Math.Abs(sum).ToString("#,0.00", CultureInfo.InvariantCulture);
        var sign = sum < 0 ? "\u2212" : "";
        return House.Currency switch
        {
            "GBP" => $"{sign}£{text}",
            "EUR" => $"{sign}€{text}",
            "USD" => $"{sign}${text}",
            var code => $"{sign}{code}\u00a0{text}",
        };
    }

    internal static string Hours(int minutes) => $"{(minutes / 60.0).ToString("0.0", CultureInfo.InvariantCulture)}\u00a0h";

    /// <summary>A person by name; "not noted" where that is not known.</summary>
    internal string Name(Id<Person>? person)
    {
        var known = record.Workshop.People.FirstOrDefault(p => p.Id == person);
        return known is null ? "name not noted" : known.Name.Length > 0 ? known.Name : known.Initials;
    }

    /// <summary>A figure with unit and what it is good to; the reason where there is none.</summary>
    internal string Value(MeasureDefinition measure, JudgedReading? judged) => judged switch
    {
        null => "",
        { Reading.NoReading.Length: > 0 } none => $"no reading: {none.Reading.NoReading}",
        { Reading.Si: { } si } => ShownMeasure.Text(measure, si, judged.BandSi, House.Units).Replace(' ', NoBreak),
        _ => judged.Reading.Typed,
    };

    internal string Label(MeasureDefinition measure) => Say(measure.Label);

    internal string Where(Place place) => Say(place.Words());

    /// <summary>A table, or a sentence that says there is nothing to put into one.</summary>
    internal Block TableOr(string nothing, string name, IReadOnlyList<Column> columns, IReadOnlyList<IReadOnlyList<Prose>> rows) =>
        rows.Count == 0 ? Tell(nothing) : new Table(Say(name), [.. columns.Select(c => c with { Heading = Say(c.Heading) })], rows);
}
