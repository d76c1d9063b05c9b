namespace Tickover.Cli.Json;

/// <summary>A part of a log's file.</summary>
/// <param name="StartSeconds">Start, s.</param>
/// <param name="EndSeconds">End, s.</param>
/// <param name="Words">How it begins and what the engine is like in it.</param>
internal sealed record LoggedPart(double StartSeconds, double EndSeconds, string Words);
