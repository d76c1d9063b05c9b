using System.Globalization;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising.Mixture;

/// <summary>Gas of a whole bank: all its mixture screws by the same turn, one after the other, then the bank read again. What differs between its cylinders it does not show.</summary>
internal static class ByBank
{
    /// <summary>What to do next on a bank.</summary>
    /// <param name="book">The book.</param>
    /// <param name="bank">Number of the bank.</param>
    /// <param name="deviation">Standard deviation of a reading of λ.</param>
    /// <returns>The screw and its turn, or the reading; null where the bank stands right. The remark may stand without either.</returns>
    public static (Adjuster Screw, ScrewAdvice Advice)? Of(BalanceBook book, int bank, double deviation)
    {
        var screws = book.Plan.Adjusters.Where(a => a.Kind is AdjusterKind.MixtureScrew or AdjusterKind.JetNut && book.Plan.Barrels[a.Barrels[0] - 1].Bank == bank).ToList();
        if (screws.Count == 0)
        {
            return null;
        }

        if (Begun(book, bank, screws) is { Left.Count: > 0 } begun)
        {
            return (begun.Left[0], new ScrewAdvice(Read: false, begun.Turns, Line($"As the other screws of this bank: all alike. {(begun.Left.Count == 1 ? "This is the last of them." : $"{begun.Left.Count} are left.")}")));
        }

        var name = BankNames.Of(book.Plan, bank);
        var task = new GasTask(screws[0], $"{name}, mixture screws", $"λ or CO of the {name.ToLowerInvariant()}, analyser warm and its hose clear of leaks; a minute for the gas to come through.");
        var advice = ByGas.Of(task, ScrewHistory.OfBank(book, bank, screws), deviation);
        return (screws[0], advice.Turns == 0 ? advice : advice with { Why = $"{name}: {advice.Why} All {screws.Count} screws alike, this one first." });
    }

    // screws of the bank turned since it was last read are followed by the others, by the same turn
    private static (List<Adjuster> Left, double Turns) Begun(BalanceBook book, int bank, List<Adjuster> screws)
    {
        var since = book.Steps.Skip(book.Steps.ToList().FindLastIndex(s => s is BankGas gas && gas.Bank == bank) + 1).OfType<Turned>().ToList();
        var turned = screws.ToDictionary(s => s, s => since.Where(t => string.Equals(t.Adjuster, s.Key, StringComparison.OrdinalIgnoreCase)).Sum(t => t.Turns));
        var first = since.Select(t => screws.Find(s => string.Equals(s.Key, t.Adjuster, StringComparison.OrdinalIgnoreCase))).FirstOrDefault(s => s is not null);
        return first is null || turned[first] == 0 || !book.Steps.Any(s => s is BankGas gas && gas.Bank == bank) ? ([], 0) : ([.. screws.Where(s => turned[s] == 0)], turned[first]);
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
