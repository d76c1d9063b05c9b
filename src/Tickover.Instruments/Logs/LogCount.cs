namespace Tickover.Instruments.Logs;

/// <summary>A number of rows and what about them.</summary>
/// <param name="What">Reason or repair, in plain words.</param>
/// <param name="Rows">How many.</param>
public sealed record LogCount(string What, long Rows);
