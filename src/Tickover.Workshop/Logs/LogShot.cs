namespace Tickover.Workshop.Logs;

/// <summary>What one fast opening in a log says of the accelerator pump.</summary>
/// <param name="StartSeconds">When the throttle began to open, s from the first sample.</param>
/// <param name="Bank">Bank from 1 whose exhaust was measured; null where one probe sees all.</param>
/// <param name="Verdict">The verdict.</param>
/// <param name="Words">What the trace shows, with its numbers: a sentence.</param>
/// <param name="Advice">What to do, in order; sentences.</param>
/// <param name="Open">What this trace cannot tell; sentences.</param>
public sealed record LogShot(double StartSeconds, int? Bank, TipInVerdict Verdict, string Words, IReadOnlyList<string> Advice, IReadOnlyList<string> Open);
