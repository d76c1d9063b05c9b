using Tickover.Physics.Walls;

namespace Tickover.Workshop.Leaks;

/// <summary>The largest flat panel of a tank.</summary>
/// <param name="Metal">Its metal.</param>
/// <param name="ShortMillimetres">Shorter side, mm.</param>
/// <param name="LongMillimetres">Longer side, mm.</param>
/// <param name="ThicknessMillimetres">What is left of the sheet, mm.</param>
/// <param name="StressMegapascals">Stress it may bear, MPa; null for the metal's usual.</param>
public sealed record LeakPanel(Metal Metal, double ShortMillimetres, double LongMillimetres, double ThicknessMillimetres, double? StressMegapascals);
