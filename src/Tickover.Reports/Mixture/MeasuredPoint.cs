namespace Tickover.Reports.Mixture;

/// <summary>Readings taken round one place of the map.</summary>
/// <param name="Spot">Where.</param>
/// <param name="Lambda">Mean measured λ, 1.</param>
/// <param name="Count">Number of readings; the point's area.</param>
public readonly record struct MeasuredPoint(MapSpot Spot, double Lambda, int Count)
{
    /// <summary>λ that the fit says there, 1; null where nothing was fitted.</summary>
    public double? Expected { get; init; }

    /// <summary>How far from <see cref="Expected"/> chance may bring a reading to either side, half of its 90 % band, 1.</summary>
    public double Half { get; init; }

    /// <summary>Measured less expected λ where that is more than chance explains; null where it is not.</summary>
    internal double? Off => Expected is { } expected && Math.Abs(Lambda - expected) > Half ? Lambda - expected : null;
}
