namespace Tickover.Workshop.Gauges;

/// <summary>A remedy on the same road.</summary>
/// <param name="Key">Its name in addresses and JSON.</param>
/// <param name="Name">Its name for people.</param>
/// <param name="RmsLitres">Root mean square of how wrong the needle is, L.</param>
/// <param name="WorstLitres">The most it is wrong, L.</param>
/// <param name="LampAlarms">How often the lamp lights although the fuel at rest would not light it.</param>
/// <param name="MinutesToLevel">Time until both tanks are within 10 mm after a fill through the left one; null where they never are.</param>
/// <param name="DrySeconds">How long the pick-up draws air, s.</param>
public sealed record GaugeRemedy(string Key, string Name, double RmsLitres, double WorstLitres, int LampAlarms, double? MinutesToLevel, double DrySeconds);
