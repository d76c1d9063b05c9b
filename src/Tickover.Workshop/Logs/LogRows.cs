namespace Tickover.Workshop.Logs;

/// <summary>Rows of a log that share a fate.</summary>
/// <param name="What">What they were, or what was done to them, in plain words.</param>
/// <param name="Count">How many.</param>
public sealed record LogRows(string What, long Count);
