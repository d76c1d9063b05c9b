namespace Tickover.Cli.Json;

/// <summary>Time of a log that made no point.</summary>
/// <param name="Why">Why.</param>
/// <param name="Seconds">How much, s.</param>
internal sealed record LoggedTime(string Why, double Seconds);
