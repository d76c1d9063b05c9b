namespace Tickover.Workshop.Linkages;

/// <summary>Everything a linkage says about itself.</summary>
public sealed record LinkageAnalysis
{
    /// <summary>The linkage as described.</summary>
    public required Linkage Linkage { get; init; }

    /// <summary>Limits on the air against the mean.</summary>
    public required LinkageLimits Limits { get; init; }

    /// <summary>From pedal up to pedal down, evenly.</summary>
    public required IReadOnlyList<LinkageMoment> Course { get; init; }

    /// <summary>Where its parts stand at a few positions over the travel, for the room a drawing needs.</summary>
    public required IReadOnlyList<LinkageStance> Stances { get; init; }

    /// <summary>The largest mismatches as it is.</summary>
    public required LinkageWorst Worst { get; init; }

    /// <summary>How far each carburettor is held off its stop with the pedal up, degrees.</summary>
    public required IReadOnlyList<double> HeldOffDegrees { get; init; }

    /// <summary>Where the pedal's shaft comes to rest, degrees from pedal up.</summary>
    public required double RestDegrees { get; init; }

    /// <summary>Where it ends, degrees from pedal up.</summary>
    public required double EndDegrees { get; init; }

    /// <summary>What ends the travel.</summary>
    public required TravelEnd End { get; init; }

    /// <summary>Name of the carburettor or rod that ends it; null for the floor.</summary>
    public string? EndsAt { get; init; }

    /// <summary>How far each carburettor opens.</summary>
    public required IReadOnlyList<ReachLine> Reach { get; init; }

    /// <summary>Rods that come into line with a lever.</summary>
    public required IReadOnlyList<OverCentre> OverCentres { get; init; }

    /// <summary>Where a rod comes nearest to its lever's line, however far that is; null where no rod moves.</summary>
    public OverCentre? NearestCentre { get; init; }

    /// <summary>Which carburettor to match the others to: its number.</summary>
    public required int Reference { get; init; }

    /// <summary>Why that one.</summary>
    public required string ReferenceWhy { get; init; }

    /// <summary>Settings that equalise.</summary>
    public required Equalised Equalised { get; init; }

    /// <summary>What play does at idle.</summary>
    public required IReadOnlyList<PlayLine> Play { get; init; }

    /// <summary>What warmth does; null where nothing is said of it.</summary>
    public IReadOnlyList<WarmLine>? Warm { get; init; }

    /// <summary>What all this comes to, the first thing first.</summary>
    public IReadOnlyList<LinkageAdvice> Advice { get; init; } = [];

    /// <summary>Names of the carburettors.</summary>
    public IReadOnlyList<string> Names => [.. Linkage.Carburettors.Select(c => Linkage.Shafts[c].Name)];
}
