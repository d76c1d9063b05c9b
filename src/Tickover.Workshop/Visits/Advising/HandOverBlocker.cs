namespace Tickover.Workshop.Visits.Advising;

/// <summary>Something to do before the car is handed back.</summary>
/// <param name="Sentence">What to do, verb first.</param>
/// <param name="Why">Why, in one sentence.</param>
public sealed record HandOverBlocker(string Sentence, string Why);
