using System.Globalization;

namespace Tickover.Workshop.Visits.Measures;

/// <summary>Puts readings into rounds and says which rounds count.</summary>
public static class Rounds
{
    /// <summary>By so much the first barrel may have moved until it is read again, kg/h; common practice.</summary>
    public const double LargestMoveKilogramsPerHour = 0.25;

    private const double SecondsAnHour = 3600;

    /// <summary>A reading on the limit itself is within it; the conversion to SI may have moved its last bits.</summary>
    private const double Slack = 1e-9;

    /// <summary>The rounds of a visit.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>The rounds in the order they were begun; one round of several measures gives one each.</returns>
    public static IReadOnlyList<ReadingRound> Of(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return
        [
            .. from reading in Valid(record.Readings)
               where reading.Round is not null
               group reading by (reading.Round, reading.Measure, reading.Moment) into round
               let measure = MeasureCatalogue.Find(round.Key.Measure)
               where measure is not null
               select Put(measure, [.. round]),
        ];
    }

    /// <summary>The readings that hold: those struck out and those another stands in for are left out.</summary>
    /// <param name="readings">Readings in the order they were kept.</param>
    /// <returns>The readings that hold, in the same order.</returns>
    public static IReadOnlyList<Reading> Valid(IReadOnlyList<Reading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var standing = readings.Where(r => !r.Removed).ToList();
        var corrected = standing.Select(r => r.Corrects).OfType<Id<Reading>>().ToHashSet();
        return [.. standing.Where(r => !corrected.Contains(r.Id))];
    }

    private static ReadingRound Put(MeasureDefinition measure, IReadOnlyList<Reading> readings)
    {
        var first = readings[0].Place;
        var begun = readings.TakeWhile(r => r.Place == first).Last();
        var after = readings.SkipWhile(r => r.Place == first).ToList();
        var again = after.LastOrDefault(r => r.Place == first);
        var others = after.Where(r => r.Place != first).GroupBy(r => r.Place).Select(g => g.Last());
        var moved = again?.Si - begun.Si;
        var isVoid = measure.Quantity == Quantity.Airflow && Math.Abs(moved ?? 0) * SecondsAnHour > LargestMoveKilogramsPerHour + Slack;
        return new ReadingRound
        {
            Round = readings[0].Round,
            Measure = measure,
            Moment = readings[0].Moment,
            Readings = [begun, .. others],
            Again = again,
            MovedSi = moved,
            IsVoid = isVoid,
            Why = isVoid ? string.Create(CultureInfo.InvariantCulture, $"{first.Words()} moved by {Math.Abs(moved!.Value) * SecondsAnHour:0.00}\u2009kg/h while the round was read, more than {LargestMoveKilogramsPerHour}. Let the engine settle and read all again.") : "",
        };
    }
}
