using System.Globalization;
using System.Text;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Cli.Output;

/// <summary>Advice on balance as text.</summary>
/// <param name="width">Columns to fill at most.</param>
internal sealed class BalanceText(int width)
{
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    /// <summary>Writes it.</summary>
    /// <param name="plan">The engine.</param>
    /// <param name="advice">The advice.</param>
    /// <returns>The text.</returns>
    public string Text(EnginePlan plan, BalanceAdvice advice)
    {
        var text = new StringBuilder();
        foreach (var last in advice.Rounds.Where(r => r.Mean > 0).GroupBy(r => r.Round.HeldRpm ?? 0).OrderBy(g => g.Key).Select(g => g.Last()))
        {
            Round(text, plan, last);
        }

        if (advice.Rounds.Count > 1)
        {
            text.Append(TextTable.Text(width, ["Round\t", "At", "Moved before", "Mean\t", "Spread\t", ""], advice.Rounds.Select(History)));
            text.AppendLine();
        }

        Remarks(text, advice.Remarks.Concat(advice.Rounds.SelectMany(Odd)));
        Causes(text, advice);
        Next(text, advice.Next);
        text.AppendLine();
        WrappedText.Append(text, width, string.Empty, "Running engines turn, burn and give off carbon monoxide: extraction on, clear of belt and fan, a meter at the mouth may be spat back at. Follow the local rules.");
        return text.ToString();
    }

    /// <summary>Writes what to do next and what the last round has to say, without the rounds themselves.</summary>
    /// <param name="advice">The advice.</param>
    /// <returns>The text.</returns>
    public string Brief(BalanceAdvice advice)
    {
        var text = new StringBuilder();
        Remarks(text, advice.Remarks.Concat(advice.Rounds.TakeLast(1).SelectMany(Odd)));
        Causes(text, advice);
        Next(text, advice.Next);
        return text.ToString();
    }

    private static IEnumerable<string> Odd(RoundAccount round) =>
        round.Remarks.Prepend(round.Why).Where(w => w.Length > 0).Select(w => string.Create(C, $"Round {round.Round.Number}: {w}"));

    private void Remarks(StringBuilder text, IEnumerable<string> remarks)
    {
        foreach (var remark in remarks)
        {
            WrappedText.Append(text, width, "  ", remark);
        }
    }

    private void Next(StringBuilder text, NextMove next)
    {
        text.AppendLine(C, $"Next. {next.Who}. {next.What}{(next.What.EndsWith('?') ? "" : ".")}");
        WrappedText.Append(text, width, "  ", next.Why);
        foreach (var e in next.Expect)
        {
            text.AppendLine(C, $"  Expect barrel {e.Barrel}: {e.Now:0.0} → {e.Then:0.0} kg/h ({e.Low:0.0} to {e.High:0.0})");
        }
    }

    private void Round(StringBuilder text, EnginePlan plan, RoundAccount round)
    {
        var rpm = round.Rpm is { } r ? string.Create(C, $", {r.Low:0} to {r.High:0} rpm") : ", rpm not noted";
        WrappedText.Append(text, width, string.Empty, string.Create(C, $"Round {round.Round.Number}, {At(round)}{rpm}: mean {round.Mean:0.0} kg/h, spread {round.Spread:0.0}, limit ±{100 * round.Barrels[0].LimitPart:0} % of the mean{(round.BankMeans.Count > 1 ? $", banks {string.Join(" and ", round.BankMeans.Select(m => m.ToString("0.0", C)))}" : "")}."));
        text.Append(TextTable.Text(
            width,
            ["Barrel\t", "Of", "kg/h\t", "Off mean\t", "Good to\t", ""],
            round.Barrels.Select(b => (IReadOnlyList<string>)[
                b.Barrel.ToString(C),
                plan.Carburettors[plan.Barrels[b.Barrel - 1].Carburettor - 1].Words,
                b.Air?.ToString("0.0", C) ?? "–",
                b.Air is null ? "" : string.Create(C, $"{100 * b.DeviationPart:+0;−0;0} %"),
                b.Air is null ? "" : string.Create(C, $"±{100 * b.BandPart:0} %"),
                Words(b)])));
        text.AppendLine();
    }

    private static void Causes(StringBuilder text, BalanceAdvice advice)
    {
        if (advice.Causes.Count == 0)
        {
            return;
        }

        text.AppendLine(C, $"What may be wrong besides screws (only screws: {100 * advice.OnlyScrews:0} %)");
        foreach (var cause in advice.Causes)
        {
            text.AppendLine(C, $"  {100 * cause.Probability,3:0} %  {cause.Words}");
        }

        text.AppendLine();
    }

    private static IReadOnlyList<string> History(RoundAccount round) =>
    [
        round.Round.Number.ToString(C),
        At(round),
        round.Before,
        round.Mean.ToString("0.0", C),
        round.Spread.ToString("0.0", C),
        round.IsVoid ? "void" : round.AllWithin ? "within" : round.IsWhole ? "outside" : "in part",
    ];

    private static string At(RoundAccount round) => round.Round.HeldRpm is { } rpm ? string.Create(C, $"held {rpm:#,0}") : round.Round.RodsOff ? "idle, rods off" : "idle";

    private static string Words(BarrelStanding barrel) => (barrel.Standing, barrel.IsHollow) switch
    {
        (Standing.NotRead, _) => "not read",
        (_, true) => "moved since",
        (Standing.Low, _) => "low",
        (Standing.High, _) => "high",
        (Standing.CannotTell, _) => "cannot tell",
        _ => "within",
    };
}
