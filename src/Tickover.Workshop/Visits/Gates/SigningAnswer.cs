namespace Tickover.Workshop.Visits.Gates;

/// <summary>An act to be kept, or why there is none.</summary>
/// <param name="Act">The act; null where it is refused.</param>
/// <param name="Refusals">Sentences that say what is wrong and what to do; none where there is an act.</param>
public sealed record SigningAnswer(Act? Act, IReadOnlyList<string> Refusals);
