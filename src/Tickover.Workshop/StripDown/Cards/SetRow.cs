using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.StripDown.Cards;

/// <summary>One measure over a whole set of carburettors.</summary>
public sealed record SetRow
{
    /// <summary>The measure.</summary>
    public required MeasureDefinition Measure { get; init; }

    /// <summary>How the places lie to each other.</summary>
    public required SetStanding Standing { get; init; }

    /// <summary>What most have, or the range where no two need be alike, with its unit; empty where nothing is noted.</summary>
    public string Usual { get; init; } = "";

    /// <summary>Whether <see cref="Usual"/> is a range over the places rather than what each of them has.</summary>
    public bool IsRange { get; init; }

    /// <summary>The places that stand out, in engine order.</summary>
    public IReadOnlyList<SetOdd> Odd { get; init; } = [];

    /// <summary>The places of which nothing is noted, where something is noted of others.</summary>
    public IReadOnlyList<Place> Missing { get; init; } = [];

    /// <summary>What was judged and by what, in one sentence; empty where nothing was.</summary>
    public string Why { get; init; } = "";
}
