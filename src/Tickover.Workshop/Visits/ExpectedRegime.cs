namespace Tickover.Workshop.Visits;

/// <summary>What was expected of a set of jets in one regime before it was tried.</summary>
/// <param name="Regime">The regime in words: idle, progression, cruise, full load.</param>
/// <param name="Lambda">Mean λ over the regime, by use, 1.</param>
/// <param name="Richest">Lower end of its 90 % band, 1.</param>
/// <param name="Leanest">Upper end of its 90 % band, 1.</param>
/// <param name="Share">Share of driving in the regime expected in target, 0 to 1.</param>
public sealed record ExpectedRegime(string Regime, double Lambda, double Richest, double Leanest, double Share);
