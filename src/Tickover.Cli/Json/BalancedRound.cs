using Tickover.Workshop.Balance;

namespace Tickover.Cli.Json;

/// <summary>What a round says.</summary>
internal sealed record BalancedRound
{
    /// <summary>Its number.</summary>
    public required int Number { get; init; }

    /// <summary>Speed held, rpm; null at idle.</summary>
    public double? HeldRpm { get; init; }

    /// <summary>What was moved before it.</summary>
    public required string Before { get; init; }

    /// <summary>Mean, kg/h.</summary>
    public required double Mean { get; init; }

    /// <summary>Largest less smallest, kg/h.</summary>
    public required double Spread { get; init; }

    /// <summary>Lowest engine speed noted; null where none was.</summary>
    public double? LowestRpm { get; init; }

    /// <summary>Highest engine speed noted; null where none was.</summary>
    public double? HighestRpm { get; init; }

    /// <summary>Whether every barrel was read and all is within its limit.</summary>
    public required bool AllWithin { get; init; }

    /// <summary>Why the round is void; empty where it is not.</summary>
    public required string Void { get; init; }

    /// <summary>What is odd about it.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>Means of the banks, kg/h.</summary>
    public required IReadOnlyList<double> BankMeans { get; init; }

    /// <summary>The barrels.</summary>
    public required IReadOnlyList<BalancedBarrel> Barrels { get; init; }

    /// <summary>Writes an account.</summary>
    /// <param name="round">The account.</param>
    /// <returns>Its lines.</returns>
    public static BalancedRound Of(RoundAccount round) => new()
    {
        Number = round.Round.Number,
        HeldRpm = round.Round.HeldRpm,
        Before = round.Before,
        Mean = Math.Round(round.Mean, 3),
        Spread = Math.Round(round.Spread, 3),
        LowestRpm = round.Rpm?.Low,
        HighestRpm = round.Rpm?.High,
        AllWithin = round.AllWithin,
        Void = round.Why,
        Remarks = round.Remarks,
        BankMeans = [.. round.BankMeans.Select(m => Math.Round(m, 3))],
        Barrels = [.. round.Barrels.Select(b => new BalancedBarrel(
            b.Barrel, b.Air is { } air ? Math.Round(air, 3) : null, Math.Round(b.DeviationPart, 4), Math.Round(b.LimitPart, 4), Math.Round(b.BandPart, 4), char.ToLowerInvariant(b.Standing.ToString()[0]) + b.Standing.ToString()[1..]))],
    };
}
