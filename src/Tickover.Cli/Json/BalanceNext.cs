using Tickover.Workshop.Balance;

namespace Tickover.Cli.Json;

/// <summary>The next thing to do.</summary>
internal sealed record BalanceNext
{
    /// <summary>The kind: read, turn, rodsOff, offerRod, rodsOn, look, repair, done.</summary>
    public required string Kind { get; init; }

    /// <summary>Where.</summary>
    public required string Who { get; init; }

    /// <summary>What and how far.</summary>
    public required string What { get; init; }

    /// <summary>Why.</summary>
    public required string Why { get; init; }

    /// <summary>Key of what is turned, offered or looked at; null where nothing is.</summary>
    public string? Adjuster { get; init; }

    /// <summary>Turns, positive opens; zero where nothing is turned.</summary>
    public double Turns { get; init; }

    /// <summary>Speed to hold, rpm; null for idle.</summary>
    public double? HeldRpm { get; init; }

    /// <summary>What to read: air, vacuum, lambda, header.</summary>
    public required IReadOnlyList<string> Read { get; init; }

    /// <summary>Which barrels to read; all where empty.</summary>
    public required IReadOnlyList<int> Barrels { get; init; }

    /// <summary>The fault to look for; null where none is.</summary>
    public string? Fault { get; init; }

    /// <summary>What to expect.</summary>
    public required IReadOnlyList<BalanceExpected> Expect { get; init; }

    /// <summary>Turns foreseen, this one included.</summary>
    public int TurnsForeseen { get; init; }

    /// <summary>Writes a move.</summary>
    /// <param name="next">The move.</param>
    /// <returns>Its line.</returns>
    public static BalanceNext Of(NextMove next) => new()
    {
        Kind = Camel(next.Kind.ToString()),
        Who = next.Who,
        What = next.What,
        Why = next.Why,
        Adjuster = next.Adjuster?.Key,
        Turns = next.Turns,
        HeldRpm = next.HeldRpm,
        Read = [.. Enum.GetValues<ReadKinds>().Where(k => k != ReadKinds.None && next.Read.HasFlag(k)).Select(k => Camel(k.ToString()))],
        Barrels = next.Barrels,
        Fault = next.Fault?.ToString(),
        Expect = [.. next.Expect.Select(e => new BalanceExpected(e.Barrel, Math.Round(e.Now, 2), Math.Round(e.Then, 2), Math.Round(e.Low, 2), Math.Round(e.High, 2)))],
        TurnsForeseen = next.MovesForeseen,
    };

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
