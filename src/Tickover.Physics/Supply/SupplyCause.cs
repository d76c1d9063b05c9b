namespace Tickover.Physics.Supply;

/// <summary>A cause the readings point to.</summary>
/// <param name="Kind">The cause.</param>
/// <param name="Probability">How likely it is after the readings, 1.</param>
/// <param name="Forecast">What each reading would show if it were so, in the size that fits best.</param>
public sealed record SupplyCause(SupplyFaultKind Kind, double Probability, IReadOnlyDictionary<SupplyReadingKind, double> Forecast);
