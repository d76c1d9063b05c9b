namespace Tickover.Practice.Virtual;

/// <summary>What is true of a running engine at one moment.</summary>
/// <param name="Rpm">Speed.</param>
/// <param name="Linkage">Where the linkage stands, degrees.</param>
/// <param name="Barrels">Barrel by barrel.</param>
internal sealed record EngineState(double Rpm, double Linkage, IReadOnlyList<BarrelState> Barrels);
