namespace Tickover.Workshop.FaultFinding;

/// <summary>A cause in the ranking.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Probability">That it is at work, alone or with others, 0 to 1.</param>
/// <param name="Start">The same before the first answer, 0 to 1.</param>
public sealed record FaultRank(FaultCause Cause, double Probability, double Start);
