namespace Tickover.Cli.Json;

/// <summary>A barrel in a round.</summary>
/// <param name="Barrel">Its number.</param>
/// <param name="Air">kg/h as corrected; null where not read.</param>
/// <param name="DeviationPart">Off the mean, as a part of it.</param>
/// <param name="LimitPart">The limit, as a part of the mean.</param>
/// <param name="BandPart">What the deviation is good to (±, 90 %).</param>
/// <param name="Standing">notRead, within, low, high or cannotTell.</param>
internal sealed record BalancedBarrel(int Barrel, double? Air, double DeviationPart, double LimitPart, double BandPart, string Standing);
