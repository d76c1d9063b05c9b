namespace Tickover.Physics.Walls;

/// <summary>A part of a tank's wall that rots alike: what lies under pads, or what lies open. docs/physics/walls.md (18), (20), (21).</summary>
public sealed record WallZone
{
    /// <summary>What was read of it.</summary>
    public required PitSample Sample { get; init; }

    /// <summary>Area one reading speaks for, m²; above zero. A cell gone over all its width, or the probe's foot where one spot was read.</summary>
    public required double PatchSquareMetres { get; init; }

    /// <summary>Area of the zone, m²; not below what was read.</summary>
    public required double AreaSquareMetres { get; init; }

    /// <summary>Thickness of sound wall, m; above zero.</summary>
    public required double WallMetres { get; init; }

    /// <summary>How far a measured depth may be off, m; not negative.</summary>
    public double GaugeErrorMetres { get; init; }

    /// <summary>How many patches were not read; T of the page.</summary>
    public double PatchesNotRead => Math.Max(0, AreaSquareMetres / Precondition.Positive(PatchSquareMetres) - Sample.Count); // walls (9)

    /// <summary>The deepest pit measured, m; null where none was.</summary>
    public double? DeepestReadMetres => Sample.DepthsMetres.Count > 0 ? Sample.DepthsMetres.Max() : null;

    /// <summary>Whether a reading found a hole.</summary>
    public bool IsThrough => Sample.DeeperThanMetres.Any(d => d >= WallMetres) || DeepestReadMetres >= WallMetres;

    /// <summary>What the readings say of what was not read.</summary>
    /// <returns>The estimate; null for too few readings.</returns>
    public PitPosterior? Estimate() => PitPosterior.Of(Sample);

    /// <summary>The chance of a hole anywhere in the zone.</summary>
    /// <param name="estimate">The zone's estimate.</param>
    /// <param name="growth">How pits grow.</param>
    /// <param name="years">Years from now, not negative.</param>
    /// <returns>The chance, its band from slow growth and a lucky reading of the figures to fast growth and an unlucky one.</returns>
    public ChanceBand HoleChance(PitPosterior estimate, GrowthRange growth, double years)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        ArgumentNullException.ThrowIfNull(growth);
        if (IsThrough)
        {
            return new ChanceBand(1, 1, 1);
        }

        var (slow, middle, fast) = growth.Factors(years);
        // A pit that is through then is now as deep as the wall over its growth.
        var deepNow = new DepthBand(WallMetres / slow, WallMetres / middle, WallMetres / fast); // walls (21)
        var notRead = estimate.Deeper(deepNow, PatchesNotRead);
        return notRead.Or(Read(deepNow));
    }

    private ChanceBand Read(DepthBand deepNow)
    {
        var deepest = Sample.DepthsMetres.Concat(Sample.DeeperThanMetres).Max();
        return new ChanceBand(
            deepest - GaugeErrorMetres >= deepNow.LowMetres ? 1 : 0,
            deepest >= deepNow.MiddleMetres ? 1 : 0,
            deepest + GaugeErrorMetres >= deepNow.HighMetres ? 1 : 0);
    }
}
