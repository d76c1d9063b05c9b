namespace Tickover.Workshop.Linkages.Parts;

/// <summary>A shaft of a linkage as described; a throttle spindle where it carries plates.</summary>
public sealed record ShaftPart
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The point of its centre line that lengths along it are measured from, mm.</summary>
    public required Place At { get; init; }

    /// <summary>The direction it runs.</summary>
    public required Place Axis { get; init; }

    /// <summary>What carries it.</summary>
    public required ShaftMount Mount { get; init; }

    /// <summary>Its levers.</summary>
    public required IReadOnlyList<LeverPart> Levers { get; init; }

    /// <summary>Diameter, mm; null where it is taken as stiff.</summary>
    public double? DiameterMillimetres { get; init; }

    /// <summary>What it is made of.</summary>
    public ShaftMetal Metal { get; init; }

    /// <summary>Its plates; null for a shaft that is not a carburettor's.</summary>
    public ThrottlePart? Throttle { get; init; }
}
