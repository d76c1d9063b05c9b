using System.Globalization;
using Tickover.Web.Visits;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Balance.Recorded;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Web.Balance;

/// <summary>One reading of a round as the page sends it.</summary>
/// <param name="Reading">The reading; null where it could not be read.</param>
/// <param name="Question">What to ask once before it is kept; empty where there is nothing to ask.</param>
/// <param name="Words">What was entered, in words Undo can repeat.</param>
internal sealed record RoundEntry(Reading? Reading, string Question, string Words)
{
    private static readonly TimeSpan LatestAhead = TimeSpan.FromDays(1);

    /// <summary>Reads the form; complaints go into it.</summary>
    public static RoundEntry Of(VisitRecord record, FormFields fields, DateTimeOffset now)
    {
        var barrel = fields.Whole("barrel", "Barrel") ?? 0;
        if (RoundMeasure.Find(fields.Text("measure")) is not { } round || MeasureCatalogue.Find(round.Key) is not { } measure)
        {
            fields.Complain("This is no reading of a round. Load the page again.");
            return new RoundEntry(null, "", "");
        }

        if (PlaceOf(record, measure, barrel) is not { } place)
        {
            fields.Complain(string.Create(CultureInfo.InvariantCulture, $"There is no barrel {barrel} on this engine. Load the page again."));
            return new RoundEntry(null, "", "");
        }

        var why = fields.Text("noReading");
        var read = why.Length > 0 ? new TypedReading() : MeasureText.Read(measure, fields.Text("value"), record.Workshop.House.Units);
        if (why.Length == 0 && !read.IsRead)
        {
            fields.Complain("value", read.Problem);
        }

        var words = string.Create(CultureInfo.InvariantCulture, $"barrel {barrel}, {(why.Length > 0 ? "no reading" : read.Typed)}");
        return new RoundEntry(Make(record, fields, measure, now) with { Place = place, Typed = read.Typed, Si = read.Si, NoReading = why }, fields.Ticked("sure") ? "" : read.Question, words);
    }

    private static Reading Make(VisitRecord record, FormFields fields, MeasureDefinition measure, DateTimeOffset now) => new()
    {
        // The number is the entry's key, so that the tablet knows it again on the page.
        Id = new Id<Reading>(fields.Key),
        Visit = record.Visit.Id,
        Stage = Stage.Balance,
        Measure = measure.Key,
        Moment = fields.Choice("moment", Moment.Working),
        Instrument = fields.Named<Instrument>("instrument"),
        EngineSpeedRpm = (double?)fields.Number("rpm", "Engine speed"),
        Note = fields.Text("note"),
        Round = Guid.TryParse(fields.Text("round"), out var round) && round != Guid.Empty ? round : fields.Key,
        TakenAt = TakenAt(fields, now),
    };

    // A round of depression is read by cylinder; where a barrel feeds one, that is the place.
    private static Place? PlaceOf(VisitRecord record, MeasureDefinition measure, int barrel)
    {
        if (PlanOfVisit.Of(record) is not { } plan || plan.Barrels.FirstOrDefault(b => b.Number == barrel) is not { } found)
        {
            return null;
        }

        var name = measure.Per == PlaceKind.Cylinder ? found.Cylinders[0] : measure.Per == PlaceKind.Carburettor ? found.Carburettor : barrel;
        return new Place(measure.Per, name.ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>The tablet's clock says when; one that is far ahead of the server's is a wrong clock.</summary>
    internal static DateTimeOffset TakenAt(FormFields fields, DateTimeOffset now) =>
        DateTimeOffset.TryParse(fields.Text("takenAt"), CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var taken) && taken < now + LatestAhead ? taken : now;
}
