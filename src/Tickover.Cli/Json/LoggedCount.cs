namespace Tickover.Cli.Json;

/// <summary>A number of rows.</summary>
/// <param name="What">What about them.</param>
/// <param name="Rows">How many.</param>
internal sealed record LoggedCount(string What, long Rows);
