namespace Tickover.Workshop.Balance;

/// <summary>One thing done or read while balancing, in the order it happened: a round, a turn, an act, something looked at.</summary>
public abstract record BalanceStep;
