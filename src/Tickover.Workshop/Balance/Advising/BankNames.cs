using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Names of banks, from the names of the carburettors over them where these say a side.</summary>
public static class BankNames
{
    /// <summary>The name of a bank.</summary>
    /// <param name="plan">The engine.</param>
    /// <param name="bank">Its number, from 1.</param>
    /// <returns>"Left bank", "Right bank" or "Bank 1".</returns>
    public static string Of(EnginePlan plan, int bank)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var names = plan.Carburettors.Where(c => c.Bank == bank).Select(c => c.Name).ToList();
        foreach (var side in (string[])["left", "right"])
        {
            if (names.Count > 0 && names.TrueForAll(n => n.StartsWith(side, StringComparison.OrdinalIgnoreCase)))
            {
                return $"{char.ToUpperInvariant(side[0])}{side[1..]} bank";
            }
        }

        return FormattableString.Invariant($"Bank {bank}");
    }
}
