using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance;

/// <summary>What may be wrong, how likely it is, and the check that would settle it.</summary>
/// <param name="Fault">The fault and its place.</param>
/// <param name="Probability">0 to 1, given the readings so far.</param>
/// <param name="Words">What it is, in a sentence.</param>
/// <param name="Check">The one check that tells it from the next likely.</param>
public sealed record LikelyCause(FaultPlace Fault, double Probability, string Words, string Check);
