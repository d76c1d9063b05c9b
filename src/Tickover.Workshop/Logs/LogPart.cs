namespace Tickover.Workshop.Logs;

/// <summary>A part of a file that may be a log of its own, because the clock starts anew, rows are missing for long, or the engine is cold all at once.</summary>
/// <param name="StartSeconds">Start from the file's first sample, s.</param>
/// <param name="EndSeconds">End, s.</param>
/// <param name="Words">How it begins and what the engine is like in it, in plain words.</param>
public sealed record LogPart(double StartSeconds, double EndSeconds, string Words);
