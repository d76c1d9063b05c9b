namespace Tickover.Workshop.FaultFinding;

/// <summary>An answer to a test.</summary>
/// <param name="Key">Its key within the test.</param>
/// <param name="Words">Its words.</param>
/// <param name="Otherwise">Chance of it where none of the causes the test speaks of is there, 0 to 1.</param>
/// <param name="Likelihood">Chance of it by cause, 0 to 1.</param>
public sealed record FaultAnswer(string Key, string Words, double Otherwise, IReadOnlyDictionary<string, double> Likelihood);
