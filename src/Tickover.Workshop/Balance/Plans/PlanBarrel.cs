namespace Tickover.Workshop.Balance.Plans;

/// <summary>One barrel as it stands on the engine.</summary>
/// <param name="Number">Number from 1, as readings name it.</param>
/// <param name="Carburettor">Number of its carburettor, from 1.</param>
/// <param name="Bank">Number of its bank, from 1.</param>
/// <param name="Cylinders">Numbers of the cylinders it feeds.</param>
public sealed record PlanBarrel(int Number, int Carburettor, int Bank, IReadOnlyList<int> Cylinders);
