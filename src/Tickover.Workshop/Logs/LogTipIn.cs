namespace Tickover.Workshop.Logs;

/// <summary>A fast opening in a log, cut out with what came before and after it.</summary>
/// <param name="StartSeconds">When the throttle began to open, s from the first sample of the log.</param>
/// <param name="Bank">Bank from 1 whose exhaust was measured; null where one probe sees all.</param>
/// <param name="Trace">The rows, λ moved back by the transport delay; ready for <see cref="TipInJudgement"/>.</param>
public sealed record LogTipIn(double StartSeconds, int? Bank, TipInTrace Trace);
