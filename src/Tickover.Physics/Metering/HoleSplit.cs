namespace Tickover.Physics.Metering;

/// <summary>Progression holes split by the plate's edge.</summary>
/// <param name="BehindSquareMetres">Area on the engine's side, m²: it feeds.</param>
/// <param name="BeforeSquareMetres">Area on the air's side, m²: it bleeds air in.</param>
public readonly record struct HoleSplit(double BehindSquareMetres, double BeforeSquareMetres);
