namespace Tickover.Physics.Walls;

/// <summary>An element of an alloy as it goes into solution.</summary>
/// <param name="MassFraction">Its part of the mass, 0 to 1.</param>
/// <param name="AtomicWeightKilogramsPerMole">Atomic weight, kg/mol.</param>
/// <param name="Valence">Electrons it gives up, 1.</param>
public readonly record struct AlloyElement(double MassFraction, double AtomicWeightKilogramsPerMole, double Valence);
