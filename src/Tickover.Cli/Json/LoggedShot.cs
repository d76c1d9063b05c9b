namespace Tickover.Cli.Json;

/// <summary>One fast opening.</summary>
/// <param name="StartSeconds">When the throttle began to open, s.</param>
/// <param name="Bank">Bank from 1, or null.</param>
/// <param name="Verdict">The verdict.</param>
/// <param name="Words">What the trace shows.</param>
/// <param name="Advice">What to do.</param>
/// <param name="Open">What it cannot tell.</param>
internal sealed record LoggedShot(double StartSeconds, int? Bank, string Verdict, string Words, IReadOnlyList<string> Advice, IReadOnlyList<string> Open);
