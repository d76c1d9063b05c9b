namespace Tickover.Workshop.JetChoice;

/// <summary>One change of a proposal.</summary>
public sealed record JetChange
{
    /// <summary>Name of the part in the car's document.</summary>
    public required string Part { get; init; }

    /// <summary>The trade's name.</summary>
    public required string Label { get; init; }

    /// <summary>What is fitted.</summary>
    public required string From { get; init; }

    /// <summary>What to fit or set.</summary>
    public required string To { get; init; }

    /// <summary>Pieces wanted; zero for what is set.</summary>
    public required int Pieces { get; init; }

    /// <summary>Pieces to order, where the shelf is short of them.</summary>
    public required int ToOrder { get; init; }

    /// <summary>What this change alone does to λ by regime, as a part of it: regimes it leaves within half a per cent are left out.</summary>
    public required IReadOnlyList<(string Regime, double Part)> Effects { get; init; }
}
