namespace Tickover.Cli.Json;

/// <summary>A part of a log in which the engine did one thing.</summary>
/// <param name="StartSeconds">Start, s.</param>
/// <param name="EndSeconds">End, s.</param>
/// <param name="Regime">What it did.</param>
internal sealed record LoggedStretch(double StartSeconds, double EndSeconds, string Regime);
