namespace Tickover.Workshop.Visits.Measures;

/// <summary>One place of a round against the mean over all its places.</summary>
/// <param name="Reading">The reading with its band; its own verdict is by the limit for a single place.</param>
/// <param name="DeviationSi">Reading less mean, in SI.</param>
/// <param name="DeviationPart">The deviation as a part of the mean; not a number where the mean is zero.</param>
/// <param name="Verdict">By all limits together: surely outside comes first, then what cannot be told.</param>
public sealed record PlaceDeviation(JudgedReading Reading, double DeviationSi, double DeviationPart, Verdict Verdict);
