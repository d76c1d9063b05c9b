using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance;

/// <summary>A fault was looked for.</summary>
/// <param name="Fault">The fault and its place.</param>
/// <param name="Found">Whether it was there, and put right; false where all was in order.</param>
public sealed record CheckedFor(FaultPlace Fault, bool Found) : BalanceStep;
