namespace Tickover.Workshop.Balance;

/// <summary>The gas of a whole bank was read at idle: what all its cylinders blow together.</summary>
/// <param name="Bank">Number of the bank, from 1.</param>
/// <param name="Lambda">λ, read or found from CO.</param>
public sealed record BankGas(int Bank, double Lambda) : BalanceStep;
