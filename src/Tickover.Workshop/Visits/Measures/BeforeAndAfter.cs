using System.Globalization;

namespace Tickover.Workshop.Visits.Measures;

/// <summary>As found beside as left, for everything measured on a visit.</summary>
/// <remarks>Readings struck out, those another stands in for, and rounds that are void do not count.</remarks>
public static class BeforeAndAfter
{
    /// <summary>Compares a visit's readings.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>The measures with a reading as found or as left, in the order of the catalogue.</returns>
    public static IReadOnlyList<MeasureComparison> Of(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        var rounds = Rounds.Of(record);
        var voided = rounds.Where(r => r.IsVoid).ToLookup(r => r.Measure.Key, StringComparer.Ordinal);
        var readings = Rounds.Valid(record.Readings)
            .Where(r => r.Moment != Moment.Working && !voided[r.Measure].Any(v => v.Round == r.Round && v.Moment == r.Moment))
            .ToLookup(r => r.Measure, StringComparer.Ordinal);
        return
        [
            .. from measure in MeasureCatalogue.All
               where readings.Contains(measure.Key) || voided[measure.Key].Any(v => v.Moment != Moment.Working)
               select Compare(measure, [.. readings[measure.Key]], rounds, record.Workshop),
        ];
    }

    private static MeasureComparison Compare(MeasureDefinition measure, IReadOnlyList<Reading> readings, IReadOnlyList<ReadingRound> rounds, WorkshopRecord workshop)
    {
        var mine = rounds.Where(r => r.Measure == measure).ToList();
        return new MeasureComparison
        {
            Measure = measure,
            Rows =
            [
                .. from reading in readings
                   group reading by reading.Place into place
                   orderby Order(place.Key)
                   select new BeforeAndAfterRow(place.Key, Last(measure, place, Moment.AsFound, workshop), Last(measure, place, Moment.AsLeft, workshop)),
            ],
            AsFound = Spread(measure, readings, mine, Moment.AsFound, workshop),
            AsLeft = Spread(measure, readings, mine, Moment.AsLeft, workshop),
            VoidRounds = [.. mine.Where(r => r.IsVoid && r.Moment != Moment.Working)],
        };
    }

    // Numbers in their order; named places stay in the order in which they were first read.
    private static int Order(Place place) => int.TryParse(place.Name, CultureInfo.InvariantCulture, out var number) ? number : int.MaxValue;

    private static JudgedReading? Last(MeasureDefinition measure, IEnumerable<Reading> readings, Moment moment, WorkshopRecord workshop) =>
        readings.LastOrDefault(r => r.Moment == moment) is { } reading ? JudgedReading.Of(measure, reading, workshop) : null;

    // The last round that counts; where readings were taken outside of rounds, the last of each place, which were not taken together.
    private static RoundSpread? Spread(MeasureDefinition measure, IReadOnlyList<Reading> readings, IReadOnlyList<ReadingRound> rounds, Moment moment, WorkshopRecord workshop)
    {
        var round = rounds.LastOrDefault(r => !r.IsVoid && r.Moment == moment && r.Readings.Count > 1) ?? new ReadingRound
        {
            Round = null,
            Measure = measure,
            Moment = moment,
            Readings = [.. readings.Where(r => r.Moment == moment).GroupBy(r => r.Place).Select(g => g.Last())],
        };
        return RoundSpread.Of(round, workshop);
    }
}
