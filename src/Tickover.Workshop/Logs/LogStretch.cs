namespace Tickover.Workshop.Logs;

/// <summary>A part of a log in which the engine did one thing.</summary>
/// <param name="StartSeconds">Start from the first sample, s.</param>
/// <param name="EndSeconds">End, s.</param>
/// <param name="Regime">What it did.</param>
public sealed record LogStretch(double StartSeconds, double EndSeconds, Regime Regime);
