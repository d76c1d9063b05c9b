namespace Tickover.Workshop.Visits.Measures;

/// <summary>What is accepted of a measure, in words and, where that can be judged, in figures.</summary>
/// <remarks>
/// A workshop's default with its origin, no maker's figure: that always stands above it. Where both a figure in SI and a part of the
/// mean are given, the wider of the two holds, since the rule is said as "one or the other".
/// </remarks>
public sealed record MeasureLimit
{
    /// <summary>The limit in words, such as "±0.5 kg/h or ±10 % from barrel to barrel".</summary>
    public required string Text { get; init; }

    /// <summary>Where it comes from, in words, such as "common practice".</summary>
    public required string Source { get; init; }

    /// <summary>The least value accepted, in the measure's SI unit; null where there is none.</summary>
    public double? LowestSi { get; init; }

    /// <summary>The largest value accepted, in the measure's SI unit; null where there is none.</summary>
    public double? HighestSi { get; init; }

    /// <summary>The largest deviation from the mean over the places, in SI; null where there is none.</summary>
    public double? DeviationSi { get; init; }

    /// <summary>The largest deviation from the mean, as a part of the mean; null where there is none.</summary>
    public double? DeviationPart { get; init; }

    /// <summary>The largest spread, max − min over the places, in SI; null where there is none.</summary>
    public double? SpreadSi { get; init; }

    /// <summary>The largest spread as a part of the mean; null where there is none.</summary>
    public double? SpreadPart { get; init; }

    /// <summary>Whether any figure can be judged by it.</summary>
    public bool CanBeJudged => JudgesPlaces || JudgesRounds;

    /// <summary>Whether each value is judged by itself.</summary>
    public bool JudgesPlaces => LowestSi is not null || HighestSi is not null;

    /// <summary>Whether the places are judged against each other.</summary>
    public bool JudgesRounds => DeviationSi is not null || DeviationPart is not null || SpreadSi is not null || SpreadPart is not null;

    /// <summary>The largest deviation from a mean that is accepted.</summary>
    /// <param name="meanSi">The mean over the places.</param>
    /// <returns>The deviation in SI; null where the limit names none.</returns>
    public double? LargestDeviation(double meanSi) => Wider(DeviationSi, DeviationPart, meanSi);

    /// <summary>The largest spread that is accepted.</summary>
    /// <param name="meanSi">The mean over the places.</param>
    /// <returns>The spread in SI; null where the limit names none.</returns>
    public double? LargestSpread(double meanSi) => Wider(SpreadSi, SpreadPart, meanSi);

    private static double? Wider(double? fixedSi, double? part, double mean) =>
        (fixedSi, part * Math.Abs(mean)) switch
        {
            ({ } a, { } b) => Math.Max(a, b),
            (var a, var b) => a ?? b,
        };
}
