namespace Tickover.Physics.Sending;

/// <summary>The fuel really there, moment by moment, as far as needle and accelerations tell.</summary>
/// <param name="Volumes">Best estimate in both tanks, m³.</param>
/// <param name="HalfBands">Half the width of the band that should hold the truth nine times of ten, m³.</param>
/// <param name="Refills">Moments at which a refill was taken for one.</param>
public sealed record FuelEstimate(IReadOnlyList<double> Volumes, IReadOnlyList<double> HalfBands, IReadOnlyList<int> Refills);
