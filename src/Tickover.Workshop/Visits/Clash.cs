namespace Tickover.Workshop.Visits;

/// <summary>A field that two people changed differently.</summary>
/// <param name="Kind">Kind of the item, such as "Finding".</param>
/// <param name="Key">The item.</param>
/// <param name="Field">Name of the field.</param>
/// <param name="Was">What both started from, as JSON.</param>
/// <param name="Theirs">What stands in the record now, as JSON.</param>
/// <param name="Yours">What was asked for, as JSON.</param>
/// <param name="By">Who changed it meanwhile, as far as known.</param>
/// <param name="At">When it was changed meanwhile.</param>
public sealed record Clash(string Kind, Guid Key, string Field, string Was, string Theirs, string Yours, string By, DateTimeOffset At);
