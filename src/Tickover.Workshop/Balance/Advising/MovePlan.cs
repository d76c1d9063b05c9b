using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Turns that should bring the barrels within their limit.</summary>
/// <param name="Turns">What to turn and by how much, the greatest need first; empty where all is well or no turn helps.</param>
/// <param name="Worst">Largest deviation expected afterwards, as a part of the limit.</param>
/// <param name="SpeedOff">How far the idle speed is expected to be from where it belongs, as a part of it; zero where it is not known.</param>
/// <param name="WorstNow">Largest deviation now, as a part of the limit.</param>
/// <param name="Doubt">What a barrel is known to now (one standard deviation), as a part of the limit.</param>
internal sealed record MovePlan(IReadOnlyList<(Adjuster Adjuster, double Turns)> Turns, double Worst, double SpeedOff, double WorstNow, double Doubt);
