namespace Tickover.Workshop.Balance.Plans;

/// <summary>One carburettor as it stands on the engine.</summary>
/// <param name="Number">Number from 1, from the front, first bank first.</param>
/// <param name="Name">What it is called, such as "left rear"; "1" where nobody named it.</param>
/// <param name="Bank">Number of the bank it stands over, from 1.</param>
/// <param name="Barrels">Numbers of its barrels, from the front.</param>
public sealed record PlanCarburettor(int Number, string Name, int Bank, IReadOnlyList<int> Barrels)
{
    /// <summary>The carburettor as it is said, such as "Left rear carburettor" or "Carburettor 2".</summary>
    public string Words => char.IsAsciiDigit(Name[0]) ? $"Carburettor {Name}" : $"{char.ToUpperInvariant(Name[0])}{Name[1..]} carburettor";
}
