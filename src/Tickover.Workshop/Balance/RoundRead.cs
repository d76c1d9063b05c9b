namespace Tickover.Workshop.Balance;

/// <summary>A round was read.</summary>
/// <param name="Round">The round.</param>
public sealed record RoundRead(BalanceRound Round) : BalanceStep;
