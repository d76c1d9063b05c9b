namespace Tickover.Reports.Balance;

/// <summary>The thing to turn, and which way.</summary>
/// <param name="Adjuster">Its key, such as "bypass:4".</param>
/// <param name="Turns">Turns, positive as <see cref="Tickover.Workshop.Balance.Plans.Adjuster"/> counts.</param>
public sealed record EngineMark(string Adjuster, double Turns);
