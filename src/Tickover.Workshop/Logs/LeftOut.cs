namespace Tickover.Workshop.Logs;

/// <summary>A part of a log that makes no point.</summary>
/// <param name="Why">Why, in plain words.</param>
/// <param name="Seconds">How much of it, s.</param>
public sealed record LeftOut(string Why, double Seconds);
