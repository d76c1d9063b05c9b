namespace Tickover.Workshop.Linkages.Parts;

/// <summary>How warm things get between setting and driving.</summary>
/// <param name="ManifoldRiseKelvins">Rise of the manifold, K.</param>
/// <param name="RodRiseKelvins">Rise of the rods, K.</param>
/// <param name="Stays">The point of the manifold that stays, mm.</param>
public sealed record WarmthPart(double ManifoldRiseKelvins, double RodRiseKelvins, Place Stays);
