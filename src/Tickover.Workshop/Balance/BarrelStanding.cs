namespace Tickover.Workshop.Balance;

/// <summary>One barrel in a round.</summary>
/// <param name="Barrel">Its number.</param>
/// <param name="Air">Air as corrected for drift and speed, kg/h; null where not read.</param>
/// <param name="DeviationPart">Deviation from the mean as a part of it; zero where not read.</param>
/// <param name="LimitPart">The limit as a part of the mean.</param>
/// <param name="BandPart">What the deviation is good to (±, 90 %) as a part of the mean.</param>
/// <param name="Standing">How it stands.</param>
/// <param name="IsHollow">Whether something that moves it was turned after it was read.</param>
public sealed record BarrelStanding(int Barrel, double? Air, double DeviationPart, double LimitPart, double BandPart, Standing Standing, bool IsHollow);
