using Tickover.Workshop.Logs;

namespace Tickover.Workshop.JetFittings;

/// <summary>What was read in one regime on a run or several.</summary>
/// <param name="Regime">The regime.</param>
/// <param name="Readings">How many steady stretches were read.</param>
/// <param name="InTarget">How many of them lay in target.</param>
/// <param name="Mean">Mean λ, 1.</param>
/// <param name="Richest">Lowest λ read, 1.</param>
/// <param name="Leanest">Highest λ read, 1.</param>
/// <param name="TargetRichest">Lower end of the target, mean over where it was read, 1.</param>
/// <param name="TargetLeanest">Upper end of the target, mean over where it was read, 1.</param>
public sealed record RegimeShowing(Regime Regime, int Readings, int InTarget, double Mean, double Richest, double Leanest, double TargetRichest, double TargetLeanest);
