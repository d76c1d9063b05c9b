namespace Tickover.Workshop.Balance.Plans;

/// <summary>One thing a person can turn.</summary>
/// <remarks>A positive turn opens: more air through <see cref="Barrels"/>, or, of a mixture screw or jet nut, richer.</remarks>
public sealed record Adjuster
{
    /// <summary>Its key, such as "stop:2", "bypass:4", "rod:2", "bankrod", "coupling:1", "mixture:3", "jet:1", "lever:2", "master".</summary>
    public required string Key { get; init; }

    /// <summary>The kind.</summary>
    public required AdjusterKind Kind { get; init; }

    /// <summary>Where it is, such as "Carburettor 2, rear barrel".</summary>
    public required string Where { get; init; }

    /// <summary>What it is, such as "by-pass screw".</summary>
    public required string Thing { get; init; }

    /// <summary>Numbers of the barrels it acts on.</summary>
    public required IReadOnlyList<int> Barrels { get; init; }

    /// <summary>Word for the way of a positive turn, such as "in", "out", "longer", "open".</summary>
    public required string More { get; init; }

    /// <summary>Word for the way of a negative turn.</summary>
    public required string Less { get; init; }

    /// <summary>Smallest steps a person turns by, to one turn: 8 for a slotted screw (eighths), 6 for a nut (flats), 12 for a rod (half flats).</summary>
    public required int StepsATurn { get; init; }

    /// <summary>From one end to the other, turns.</summary>
    public required double TravelTurns { get; init; }
}
