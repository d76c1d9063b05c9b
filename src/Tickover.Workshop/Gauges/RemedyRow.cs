namespace Tickover.Workshop.Gauges;

/// <summary>What one remedy does on the same road.</summary>
/// <param name="Remedy">Which.</param>
/// <param name="Words">Its name.</param>
/// <param name="RmsLitres">Needle less truth, root mean square, L.</param>
/// <param name="PeakLitres">Furthest the needle is off, L.</param>
/// <param name="FalseLamps">Times the lamp lights with enough fuel.</param>
/// <param name="LevelMinutes">Minutes to level after a fill into one tank; null: not within the time watched.</param>
public sealed record RemedyRow(GaugeRemedy Remedy, string Words, double RmsLitres, double PeakLitres, int FalseLamps, double? LevelMinutes);
