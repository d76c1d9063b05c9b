namespace Tickover.Workshop.Balance.Advising;

/// <summary>An air reading freed of the round's drift and of speed, with what it is good to.</summary>
/// <param name="Barrel">Number of the barrel.</param>
/// <param name="Air">kg/h.</param>
/// <param name="Variance">(kg/h)².</param>
internal readonly record struct CorrectedReading(int Barrel, double Air, double Variance);
