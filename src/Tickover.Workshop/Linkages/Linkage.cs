using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages;

/// <summary>A throttle linkage as described: shafts, levers, rods and couplings from the pedal to the carburettors.</summary>
public sealed record Linkage
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The document it was read from.</summary>
    public required string Document { get; init; }

    /// <summary>Which way round the pedal's shaft turns.</summary>
    public required TurningSense PedalTurns { get; init; }

    /// <summary>How far the pedal's shaft turns from pedal up to the floor, degrees.</summary>
    public required double PedalTravelDegrees { get; init; }

    /// <summary>The shafts; number 0 is the pedal's, then in order of the document.</summary>
    public required IReadOnlyList<ShaftPart> Shafts { get; init; }

    /// <summary>Rods and couplings, from the pedal outwards.</summary>
    public required IReadOnlyList<LinkPart> Links { get; init; }

    /// <summary>How warm it gets; null where nothing is said.</summary>
    public WarmthPart? Warmth { get; init; }

    /// <summary>Numbers of the shafts that carry plates, in order of the document.</summary>
    public IReadOnlyList<int> Carburettors => [.. Enumerable.Range(0, Shafts.Count).Where(i => Shafts[i].Throttle is not null)];

    /// <summary>How many rods and couplings lie between the pedal and a shaft.</summary>
    /// <param name="shaft">Number of the shaft.</param>
    /// <returns>The count; 0 for the pedal's.</returns>
    public int StepsTo(int shaft) => Links.FirstOrDefault(l => l.To == shaft) is { } link ? StepsTo(link.From) + 1 : 0;
}
