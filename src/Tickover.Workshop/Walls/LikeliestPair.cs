namespace Tickover.Workshop.Walls;

/// <summary>The likeliest pair of Gumbel's figures of a zone; one of many the readings allow.</summary>
/// <param name="Location">λ, mm.</param>
/// <param name="Scale">α, mm.</param>
public readonly record struct LikeliestPair(double Location, double Scale);
