using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance;

/// <summary>The next thing to do, as it is said aloud, with what to expect of it.</summary>
public sealed record NextMove
{
    /// <summary>The kind.</summary>
    public required NextKind Kind { get; init; }

    /// <summary>Where: "Carburettor 2, rear barrel".</summary>
    public required string Who { get; init; }

    /// <summary>What and how far: "By-pass screw: out one eighth".</summary>
    public required string What { get; init; }

    /// <summary>Why, in a sentence or two.</summary>
    public required string Why { get; init; }

    /// <summary>What is turned, offered or looked at; null where nothing is.</summary>
    public Adjuster? Adjuster { get; init; }

    /// <summary>Turns, positive opens; zero where nothing is turned.</summary>
    public double Turns { get; init; }

    /// <summary>What to expect, the barrels that matter first; empty where nothing is computed.</summary>
    public IReadOnlyList<ExpectedReading> Expect { get; init; } = [];

    /// <summary>Speed to hold while reading, rpm; null for idle.</summary>
    public double? HeldRpm { get; init; }

    /// <summary>What to read.</summary>
    public ReadKinds Read { get; init; }

    /// <summary>Which barrels to read, in order; all where empty.</summary>
    public IReadOnlyList<int> Barrels { get; init; } = [];

    /// <summary>The fault to look for; null where none is.</summary>
    public FaultPlace? Fault { get; init; }

    /// <summary>How many turns are still foreseen, this one included; zero where none is.</summary>
    public int MovesForeseen { get; init; }
}
