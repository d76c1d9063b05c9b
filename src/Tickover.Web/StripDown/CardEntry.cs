using Tickover.Web.Visits;
using Tickover.Workshop.StripDown.Cards;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Web.StripDown;

/// <summary>What the form of a card holds: one act, a reading for each field that was changed.</summary>
/// <remarks>The page sends what stood in each field along, so that a card sent late puts nothing back that was kept meanwhile.</remarks>
internal static class CardEntry
{
    private const string Value = "v:";
    private const string Stood = "was:";

    /// <summary>The name of a field.</summary>
    public static string Field(MeasureDefinition measure, Place place) => $"{Value}{measure.Key}:{place}";

    /// <summary>The name of the hidden field with what stood there.</summary>
    public static string Was(MeasureDefinition measure, Place place) => $"{Stood}{measure.Key}:{place}";

    /// <summary>Reads the form.</summary>
    public static ReadingEntry Of(VisitRecord record, Stage stage, Place carburettor, FormFields fields, DateTimeOffset now)
    {
        var units = record.Workshop.House.Units;
        var readings = new List<Reading>();
        var question = "";
        foreach (var (measure, place, text) in Changed(fields, stage))
        {
            var read = MeasureText.Read(measure, text, units);
            if (!read.IsRead)
            {
                fields.Complain($"{measure.Label}, {place.Words().ToLowerInvariant()}: {read.Problem}");
            }

            question = question.Length == 0 && read.Question.Length > 0 ? $"{place.Words()}: {read.Question}" : question;
            readings.Add(ReadingEntry.Blank(record, stage, measure, fields, now) with
            {
                Id = Id.New<Reading>(),
                Moment = SetCards.MomentOf(stage),
                Place = place,
                Typed = read.Typed,
                Si = read.Si,
            });
        }

        if (readings.Count == 0 && fields.Problems.Count == 0)
        {
            fields.Complain("Nothing on the card was changed, so there is nothing to keep. To take a reading off, strike it out on the page of the stage.");
        }

        var asked = fields.Ticked("sure") || fields.Form.ContainsKey("asked") ? "" : question;
        return new ReadingEntry(readings, asked, $"card of {carburettor.Words().ToLowerInvariant()}, {(readings.Count == 1 ? "1 reading" : FormattableString.Invariant($"{readings.Count} readings"))}");
    }

    private static IEnumerable<(MeasureDefinition Measure, Place Place, string Text)> Changed(FormFields fields, Stage stage)
    {
        var measures = SetCards.Measures(stage).SelectMany(g => g.Measures).DistinctBy(m => m.Key, StringComparer.Ordinal).ToDictionary(m => m.Key, StringComparer.Ordinal);
        foreach (var field in fields.Form.Keys.Where(k => k.StartsWith(Value, StringComparison.Ordinal)))
        {
            var text = fields.Text(field);
            if (text.Length == 0 || string.Equals(text, fields.Text(Stood + field[Value.Length..]), StringComparison.Ordinal))
            {
                continue;
            }

            var parts = field[Value.Length..].Split(':', 2);
            if (measures.GetValueOrDefault(parts[0]) is { } measure && Place.Read(parts.ElementAtOrDefault(1)) is { } place && place.Kind == measure.Per)
            {
                yield return (measure, place, text);
            }
            else
            {
                fields.Complain($"\"{field[Value.Length..]}\" is not on this card. Load the page again.");
            }
        }
    }
}
