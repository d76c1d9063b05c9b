using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Recorded;

/// <summary>What the last turn was expected to do and what it did.</summary>
/// <param name="Adjuster">What was turned.</param>
/// <param name="Turns">How far, positive as the plan counts.</param>
/// <param name="HeldRpm">Speed at which it shows, rpm; null at idle.</param>
/// <param name="Expected">What was expected; empty where the turn was not the one advised, so that nothing was foretold.</param>
/// <param name="Got">What was read since, kg/h, by barrel.</param>
public sealed record MoveProof(Adjuster Adjuster, double Turns, double? HeldRpm, IReadOnlyList<ExpectedReading> Expected, IReadOnlyDictionary<int, double> Got)
{
    /// <summary>Looks back at the last turn of a book.</summary>
    /// <param name="book">The balancing.</param>
    /// <returns>The proof; null where nothing was turned.</returns>
    public static MoveProof? Of(BalanceBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var steps = book.Steps.ToList();
        var at = steps.FindLastIndex(s => s is Turned);
        if (at < 0 || steps[at] is not Turned turned || book.Plan.Find(turned.Adjuster) is not { } adjuster)
        {
            return null;
        }

        var next = BalanceAdvice.Of(book with { Steps = [.. steps.Take(at)] }).Next;
        var isAdvised = string.Equals(next.Adjuster?.Key, adjuster.Key, StringComparison.Ordinal) && next.Turns == turned.Turns;
        return new MoveProof(adjuster, turned.Turns, isAdvised ? next.HeldRpm : null, isAdvised ? next.Expect : [], ReadSince(steps.Skip(at), isAdvised ? next.HeldRpm : null));
    }

    /// <summary>How what was got stands to what was expected.</summary>
    /// <param name="expected">What was expected of a barrel.</param>
    /// <returns>"as expected", "less than expected", "more than expected"; "not read yet" where it was not.</returns>
    public string Words(ExpectedReading expected)
    {
        ArgumentNullException.ThrowIfNull(expected);
        return !Got.TryGetValue(expected.Barrel, out var got) ? "not read yet" : got < expected.Low ? "less than expected" : got > expected.High ? "more than expected" : "as expected";
    }

    private static Dictionary<int, double> ReadSince(IEnumerable<BalanceStep> steps, double? heldRpm) => steps.OfType<RoundRead>()
        .Where(r => r.Round.HeldRpm == heldRpm)
        .SelectMany(r => r.Round.Readings)
        .Where(r => r.Air is not null)
        .GroupBy(r => r.Barrel)
        .ToDictionary(g => g.Key, g => g.Last().Air!.Value);
}
