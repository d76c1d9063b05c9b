namespace Tickover.Physics.Balancing;

/// <summary>What a fault does to a set of readings: shapes of unit size, each with an amplitude of the same mean and deviation.</summary>
/// <param name="Shapes">Change of every reading by amplitude one; one shape for a fault with one size, several where each reading goes its own way.</param>
/// <param name="Mean">Mean amplitude.</param>
/// <param name="Deviation">Standard deviation of the amplitude; above zero.</param>
public sealed record FaultPattern(IReadOnlyList<IReadOnlyList<double>> Shapes, double Mean, double Deviation);
