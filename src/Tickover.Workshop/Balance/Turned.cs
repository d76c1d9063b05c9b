namespace Tickover.Workshop.Balance;

/// <summary>Something was turned.</summary>
/// <param name="Adjuster">Its key, such as "stop:2".</param>
/// <param name="Turns">Turns, positive as <see cref="Plans.Adjuster"/> counts.</param>
public sealed record Turned(string Adjuster, double Turns) : BalanceStep;
