namespace Tickover.Workshop.Mixture;

/// <summary>A target band of λ and what it is for.</summary>
/// <param name="Richest">Lower end of λ, 1.</param>
/// <param name="Leanest">Upper end of λ, 1.</param>
/// <param name="Regime">The regime in words.</param>
public sealed record LambdaBand(double Richest, double Leanest, string Regime);
