namespace Tickover.Workshop.Logs;

/// <summary>A span of a log that was left out.</summary>
/// <param name="StartSeconds">Start from the first sample, s.</param>
/// <param name="EndSeconds">End, s.</param>
/// <param name="Why">Why, in plain words.</param>
public sealed record LogSpan(double StartSeconds, double EndSeconds, string Why);
