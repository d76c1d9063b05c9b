namespace Tickover.Reports.Mixture;

/// <summary>Readings taken round one place of the map.</summary>
/// <param name="Spot">Where.</param>
/// <param name="Lambda">Mean measured λ, 1.</param>
/// <param name="Count">Number of readings; the point's area.</param>
public readonly record struct MeasuredPoint(MapSpot Spot, double Lambda, int Count);
