using System.Globalization;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Web.Visits;

/// <summary>What a form of readings holds: one act, a reading for each place that was filled in.</summary>
/// <param name="Readings">The readings.</param>
/// <param name="Question">What to ask once before they are kept; empty where there is nothing to ask.</param>
/// <param name="Words">What was entered, in words Undo can repeat.</param>
internal sealed record ReadingEntry(IReadOnlyList<Reading> Readings, string Question, string Words)
{
    private const string ValuePrefix = "v:";
    private static readonly TimeSpan LatestAhead = TimeSpan.FromDays(1);

    /// <summary>Reads the form.</summary>
    public static ReadingEntry Of(VisitRecord record, Stage stage, MeasureDefinition measure, FormFields fields, DateTimeOffset now)
    {
        var blank = Blank(record, stage, measure, fields, now);
        var units = record.Workshop.House.Units;
        var typed = Typed(fields, measure).ToList();
        var readings = new List<Reading>();
        var question = "";
        foreach (var (place, text) in typed)
        {
            var read = MeasureText.Read(measure, text, units);
            if (!read.IsRead)
            {
                fields.Complain(place.Kind == PlaceKind.Car ? read.Problem : $"{place.Words()}: {read.Problem}");
            }

            question = question.Length == 0 ? read.Question : question;
            readings.Add(blank with { Id = Id.New<Reading>(), Place = place, Typed = read.Typed, Si = read.Si, Round = typed.Count > 1 ? fields.Key : null });
        }

        if (readings.Count == 0 && fields.Text("noReading") is { Length: > 0 } why)
        {
            readings.Add(blank with { NoReading = why, Place = Places.Of(record, measure.Per).FirstOrDefault(Place.WholeCar) });
        }

        if (readings.Count == 0)
        {
            fields.Complain($"{measure.Label}: nothing was typed. Type the reading, or why there is none.");
        }

        var asked = fields.Ticked("sure") || fields.Form.ContainsKey("asked") ? "" : question;
        return new ReadingEntry(readings, asked, Say(measure, readings));
    }

    internal static Reading Blank(VisitRecord record, Stage stage, MeasureDefinition measure, FormFields fields, DateTimeOffset now) => new()
    {
        Visit = record.Visit.Id,
        Stage = stage,
        Measure = measure.Key,
        Moment = fields.Choice("moment", Moment.AsFound),
        Instrument = fields.Named<Instrument>("instrument"),
        EngineSpeedRpm = (double?)fields.Number("rpm", "Engine speed"),
        Note = fields.Text("note"),
        TakenAt = TakenAt(fields, now),
    };

    // The tablet's clock says when a reading was taken; one that is far ahead of the server's is a wrong clock.
    private static DateTimeOffset TakenAt(FormFields fields, DateTimeOffset now) =>
        DateTimeOffset.TryParse(fields.Text("takenAt"), CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var taken) && taken < now + LatestAhead ? taken : now;

    private static IEnumerable<(Place Place, string Text)> Typed(FormFields fields, MeasureDefinition measure)
    {
        foreach (var field in fields.Form.Keys.Where(k => k.StartsWith(ValuePrefix, StringComparison.Ordinal)))
        {
            if (fields.Text(field) is { Length: > 0 } text)
            {
                if (Place.Read(field[ValuePrefix.Length..]) is { } place && place.Kind == measure.Per)
                {
                    yield return (place, text);
                }
                else
                {
                    fields.Complain($"\"{field[ValuePrefix.Length..]}\" is no place on this car. Load the page again.");
                }
            }
        }

        if (fields.Text("named-value") is { Length: > 0 } value)
        {
            if (fields.Text("named") is { Length: > 0 and <= Place.LongestName } name)
            {
                yield return (new Place(measure.Per, name), value);
            }
            else
            {
                fields.Complain($"Say which {measure.Per.ToString().ToLowerInvariant()} it is.");
            }
        }
    }

    private static string Say(MeasureDefinition measure, List<Reading> readings) => readings switch
    {
        [{ Place.Kind: PlaceKind.Car } one] => $"{measure.Label}, {Value(one)}",
        [var one] => $"{measure.Label}, {one.Place.Words().ToLowerInvariant()}, {Value(one)}",
        _ => $"{measure.Label}, {readings.Count} readings",
    };

    private static string Value(Reading reading) => reading.NoReading.Length > 0 ? "no reading" : reading.Typed;
}
