namespace Tickover.Workshop.Balance.Advising;

/// <summary>A barrel that reads otherwise than before although nothing is noted that would move it.</summary>
/// <param name="Barrel">Number of the barrel.</param>
/// <param name="HeldRpm">Speed held, rpm; null at idle.</param>
/// <param name="Before">What it was known to pass, kg/h.</param>
/// <param name="Now">What it reads now, kg/h.</param>
internal sealed record UnnotedChange(int Barrel, double? HeldRpm, double Before, double Now);
