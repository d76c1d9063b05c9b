using System.Globalization;

namespace Tickover.Bench.Balance;

/// <summary>The study's table in Markdown. A median over all engines; one that never came within limits counts as more than any.</summary>
internal static class BalanceTable
{
    public const string Head =
        """
        | Layout | engines | balancer | moves to idle within | moves to all within | rounds to all within | minutes to all within | within at idle | within at all | within in 8 moves | moves at the end | worst spread kg/h | median rpm off | faults first | faults in three |
        |---|---|---|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|
        """;

    public static string Row(string layout, string engines, string balancer, IReadOnlyList<BalanceCase> cases)
    {
        var c = CultureInfo.InvariantCulture;
        var faults = cases.SelectMany(x => x.Ranks).ToList();
        string[] cells =
        [
            layout, $"{engines} ({cases.Count.ToString(c)})", balancer,
            Median(cases.Select(x => x.IdleReached?.Moves)), Median(cases.Select(x => x.AllReached?.Moves)), Median(cases.Select(x => x.AllReached?.Rounds)), Median(cases.Select(x => x.AllReached?.Minutes)),
            Share(cases.Count(x => x.IdleReached is not null), cases.Count), Share(cases.Count(x => x.AllReached is not null), cases.Count), Share(cases.Count(x => x.AllReached is { Moves: <= 8 }), cases.Count),
            Median(cases.Select(x => (double?)x.Moves)), cases.Max(x => x.Spread).ToString("0.0", c), Median(cases.Select(x => (double?)x.RpmOff)),
            Share(faults.Count(r => r == 1), faults.Count), Share(faults.Count(r => r <= 3), faults.Count),
        ];
        return $"| {string.Join(" | ", cells)} |";
    }

    private static string Median(IEnumerable<int?> figures) => Median(figures.Select(f => (double?)f));

    private static string Median(IEnumerable<double?> figures)
    {
        var sorted = figures.Select(f => f ?? double.PositiveInfinity).Order().ToList();
        var middle = 0.5 * (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]);
        return double.IsInfinity(middle) ? "never" : middle.ToString("0.#", CultureInfo.InvariantCulture);
    }

    private static string Share(int count, int of) => of == 0 ? "–" : string.Create(CultureInfo.InvariantCulture, $"{100.0 * count / of:0} %");
}
