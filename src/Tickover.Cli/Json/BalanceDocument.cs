using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Cli.Json;

/// <summary>What <c>balance --json</c> prints, and what <c>practice --json</c> answers to <c>{"advise":true}</c>; its form is docs/schemas/balance.schema.json.</summary>
internal sealed record BalanceDocument
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/balance/1";

    /// <summary>The car's name.</summary>
    public required string Car { get; init; }

    /// <summary>Where the work stands.</summary>
    public required string Said { get; init; }

    /// <summary>What to do next.</summary>
    public required BalanceNext Next { get; init; }

    /// <summary>Rounds in the order read.</summary>
    public required IReadOnlyList<BalancedRound> Rounds { get; init; }

    /// <summary>What may be wrong, likeliest first.</summary>
    public required IReadOnlyList<BalanceCause> Causes { get; init; }

    /// <summary>Chance that only screws want turning.</summary>
    public required double OnlyScrews { get; init; }

    /// <summary>Standard deviation of an air reading, as learned, kg/h.</summary>
    public required double Repeatability { get; init; }

    /// <summary>What turns have been worth.</summary>
    public required IReadOnlyList<BalanceGain> Gains { get; init; }

    /// <summary>Screws that did not do what they should.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>The document of a book's advice.</summary>
    /// <param name="plan">The engine.</param>
    /// <param name="advice">The advice.</param>
    /// <returns>The document.</returns>
    public static BalanceDocument Of(EnginePlan plan, BalanceAdvice advice) => new()
    {
        Car = plan.Name,
        Said = advice.Said,
        Next = BalanceNext.Of(advice.Next),
        Rounds = [.. advice.Rounds.Select(BalancedRound.Of)],
        Causes = [.. advice.Causes.Select(c => new BalanceCause(c.Fault.ToString(), Math.Round(c.Probability, 3), c.Words, c.Check))],
        OnlyScrews = Math.Round(advice.OnlyScrews, 3),
        Repeatability = Math.Round(advice.Repeatability, 3),
        Gains = [.. advice.Gains.Select(g => new BalanceGain(g.Adjuster.Key, g.HeldRpm, Math.Round(g.PerTurn, 2), Math.Round(g.Band, 2), Math.Round(g.Expected, 2), g.TimesTurned))],
        Remarks = advice.Remarks,
    };
}
