namespace Tickover.Workshop.Logs;

/// <summary>λ of one sensor over a <see cref="LogTrace"/>.</summary>
/// <param name="Bank">Bank from 1 whose exhaust it sees; null where one probe sees all, or nobody said.</param>
/// <param name="Lambda">λ at the trace's moments, the transport delay taken off; null where there is none.</param>
public sealed record LogTraceLambda(int? Bank, IReadOnlyList<double?> Lambda);
