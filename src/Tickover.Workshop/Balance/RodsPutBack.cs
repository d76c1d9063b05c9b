namespace Tickover.Workshop.Balance;

/// <summary>Rods were put back as they were.</summary>
public sealed record RodsPutBack : BalanceStep;
