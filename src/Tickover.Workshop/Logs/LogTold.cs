namespace Tickover.Workshop.Logs;

/// <summary>A log as it was read.</summary>
/// <param name="Points">Its steady points; none where it is refused.</param>
/// <param name="Told">How it was read: columns, rows left out and why, delay, doubts; plain sentences.</param>
/// <param name="Refusals">Why it cannot be used and what would do; none where it can.</param>
/// <param name="Sheet">What was taken for what, row by reason, and the trace.</param>
public sealed record LogTold(IReadOnlyList<MixturePoint> Points, IReadOnlyList<string> Told, IReadOnlyList<string> Refusals, LogSheet Sheet);
