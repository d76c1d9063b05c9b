namespace Tickover.Workshop.Balance;

/// <summary>Rods were taken off all carburettors.</summary>
public sealed record RodsTakenOff : BalanceStep;
