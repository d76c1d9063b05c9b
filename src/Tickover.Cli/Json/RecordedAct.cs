namespace Tickover.Cli.Json;

/// <summary>An act of the journal.</summary>
/// <param name="Number">Its number.</param>
/// <param name="At">When, by the server's clock.</param>
/// <param name="Words">What was done.</param>
internal sealed record RecordedAct(long Number, DateTimeOffset At, string Words);
