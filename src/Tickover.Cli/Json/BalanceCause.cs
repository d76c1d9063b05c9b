namespace Tickover.Cli.Json;

/// <summary>What may be wrong.</summary>
/// <param name="Fault">Fault and place, such as "leakBelowPlate barrel 3".</param>
/// <param name="Probability">0 to 1.</param>
/// <param name="Words">In a sentence.</param>
/// <param name="Check">The check that shows it.</param>
internal sealed record BalanceCause(string Fault, double Probability, string Words, string Check);
