using System.Globalization;

namespace Tickover.Workshop.Balance.Recorded;

/// <summary>Opens the figures of a balance to their working.</summary>
public static class BalanceWorking
{
    private const double Ninety = 1.645;

    /// <summary>The working of the round that counts and of the next turn.</summary>
    /// <param name="book">The balancing.</param>
    /// <param name="advice">What was made of it.</param>
    /// <returns>Lines in the order a person would ask; empty before there is a round.</returns>
    public static IReadOnlyList<WorkingLine> Of(BalanceBook book, BalanceAdvice advice)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(advice);
        return advice.Last is { } last ? [.. Round(book, advice, last), .. Next(advice)] : [];
    }

    private static IEnumerable<WorkingLine> Round(BalanceBook book, BalanceAdvice advice, RoundAccount last)
    {
        var read = last.Barrels.Where(b => b.Air is not null).ToList();
        var limit = book.Limits.OffMean(last.Round.IsIdle, last.Mean);
        yield return new("Mean", Line($"({string.Join(" + ", read.Select(b => Air(b.Air!.Value)))}) / {read.Count} = {last.Mean:0.00} kg/h"), Line($"measured, round {last.Round.Number}; each brought to one speed and to the drift between the first barrel's two readings"));
        yield return new("Spread", Line($"{Air(read.Max(b => b.Air!.Value))} − {Air(read.Min(b => b.Air!.Value))} = {last.Spread:0.0} kg/h"), last.Rpm is { } rpm ? Line($"at {rpm.Low:0} to {rpm.High:0} rpm") : "engine speed was not noted");
        yield return last.Round.IsIdle
            ? new("Limit at idle", Line($"the wider of {book.Limits.IdleKilogramsPerHour:0.0#} kg/h and {100 * book.Limits.IdlePart:0} % of {last.Mean:0.0} = ±{limit:0.00} kg/h, ±{100 * limit / last.Mean:0} %"), book.Limits.Origin)
            : new("Limit off idle", Line($"{100 * book.Limits.HeldPart:0} % of {last.Mean:0.0} = ±{limit:0.00} kg/h"), book.Limits.Origin);
        foreach (var barrel in read.OrderByDescending(b => Math.Abs(b.DeviationPart)).Take(2))
        {
            yield return new(Line($"Barrel {barrel.Barrel}"), Line($"({Air(barrel.Air!.Value)} − {last.Mean:0.00}) / {last.Mean:0.00} = {Percent(barrel.DeviationPart)}, good to ±{100 * barrel.BandPart:0} %"), Line($"90 %: {Ninety} × √(s² (1 + 1/{read.Count})), s = {advice.Repeatability:0.00} kg/h or {100 * book.Meter.AirPart:0} %, from repeats where there are any"));
        }
    }

    private static IEnumerable<WorkingLine> Next(BalanceAdvice advice)
    {
        var next = advice.Next;
        if (next.Adjuster is null || next.Turns == 0)
        {
            yield break;
        }

        var gain = advice.Gains.FirstOrDefault(g => string.Equals(g.Adjuster.Key, next.Adjuster.Key, StringComparison.Ordinal) && g.HeldRpm == next.HeldRpm);
        foreach (var expected in next.Expect)
        {
            yield return new(
                Line($"Barrel {expected.Barrel} after the turn"),
                Line($"{expected.Now:0.00} + {(expected.Then - expected.Now) / next.Turns:0.00} kg/h a turn × {next.Turns:0.###} = {expected.Then:0.00} kg/h ({expected.Low:0.0} to {expected.High:0.0})"),
                gain is null ? "a turn of it by the physics of a nearly shut plate, not yet seen on this car" : Line($"a turn of it as seen {gain.TimesTurned} times on this car: {gain.PerTurn:0.0} ±{gain.Band:0.0}; physics expected {gain.Expected:0.0}"));
        }
    }

    private static string Percent(double part) => Line($"{100 * part:+0;−0;0} %");

    private static string Air(double air) => air.ToString("0.0#", CultureInfo.InvariantCulture);

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
