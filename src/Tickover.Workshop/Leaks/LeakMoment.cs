namespace Tickover.Workshop.Leaks;

/// <summary>One reading of a leak test.</summary>
/// <param name="Minutes">Time from any beginning, min.</param>
/// <param name="GaugePascals">Pressure above the air around, Pa.</param>
/// <param name="Celsius">Temperature, °C; null where it was not read.</param>
/// <param name="BarometerPascals">The air around, Pa; null where it was not read again.</param>
public readonly record struct LeakMoment(double Minutes, double GaugePascals, double? Celsius, double? BarometerPascals);
