namespace Tickover.Workshop.Visits.Measures;

/// <summary>How the places of a round lie: spread, deviation from the mean, and the engine speed, always all three.</summary>
public sealed record RoundSpread
{
    /// <summary>The round.</summary>
    public required ReadingRound Round { get; init; }

    /// <summary>Mean over the places, in SI.</summary>
    public required double MeanSi { get; init; }

    /// <summary>Largest less smallest, in SI.</summary>
    public required double SpreadSi { get; init; }

    /// <summary>Half the width of the spread's band, in SI; null where the instrument says nothing of it.</summary>
    /// <remarks>The root of the sum of the squares of the bands of the largest and the smallest reading, whose errors are taken as independent.</remarks>
    public double? SpreadBandSi { get; init; }

    /// <summary>The largest deviation from the mean, as a part of the mean, without sign.</summary>
    public required double LargestDeviationPart { get; init; }

    /// <summary>The places in the order read.</summary>
    public required IReadOnlyList<PlaceDeviation> Places { get; init; }

    /// <summary>Lowest engine speed noted, rpm; null where none is.</summary>
    public double? LowestRpm { get; init; }

    /// <summary>Highest engine speed noted, rpm; null where none is.</summary>
    public double? HighestRpm { get; init; }

    /// <summary>The round by its limit: within, high where any place or the spread is surely outside, else cannot be told.</summary>
    public Verdict Verdict { get; init; }

    /// <summary>Weighs up a round.</summary>
    /// <param name="round">The round.</param>
    /// <param name="workshop">The workshop with its instruments.</param>
    /// <returns>The spread; null with fewer than two figures.</returns>
    public static RoundSpread? Of(ReadingRound round, WorkshopRecord workshop)
    {
        ArgumentNullException.ThrowIfNull(round);
        ArgumentNullException.ThrowIfNull(workshop);
        var readings = round.Readings.Where(r => r.Si is { } si && double.IsFinite(si)).Select(r => JudgedReading.Of(round.Measure, r, workshop)).ToList();
        if (!round.Measure.IsNumber || readings.Count < 2)
        {
            return null;
        }

        var mean = readings.Average(Si);
        var (low, high) = (readings.MinBy(Si)!, readings.MaxBy(Si)!);
        var band = low.BandSi is { } a && high.BandSi is { } b ? Math.Sqrt((a * a) + (b * b)) : (double?)null;
        var places = readings.ConvertAll(r => Deviation(round.Measure.Limit, r, mean));
        var spread = Si(high) - Si(low);
        return new RoundSpread
        {
            Round = round,
            MeanSi = mean,
            SpreadSi = spread,
            SpreadBandSi = band,
            LargestDeviationPart = places.Max(p => Math.Abs(p.DeviationPart)),
            Places = places,
            LowestRpm = readings.Min(r => r.Reading.EngineSpeedRpm),
            HighestRpm = readings.Max(r => r.Reading.EngineSpeedRpm),
            Verdict = Together(places, Judgement.Judge(spread, band, null, round.Measure.Limit?.LargestSpread(mean))),
        };
    }

    private static double Si(JudgedReading reading) => reading.Reading.Si!.Value;

    private static PlaceDeviation Deviation(MeasureLimit? limit, JudgedReading reading, double mean)
    {
        var deviation = Si(reading) - mean;
        var allowed = limit?.LargestDeviation(mean);
        var verdict = Judgement.Judge(deviation, reading.BandSi, -allowed, allowed);
        return new PlaceDeviation(reading, deviation, mean == 0 ? double.NaN : deviation / Math.Abs(mean), reading.Verdict.And(verdict));
    }

    private static Verdict Together(IEnumerable<PlaceDeviation> places, Verdict spread)
    {
        var worst = places.Select(p => p.Verdict).Aggregate(spread, (a, b) => a.And(b));
        return worst == Verdict.Low ? Verdict.High : worst;
    }
}
