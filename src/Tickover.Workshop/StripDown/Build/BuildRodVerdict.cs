namespace Tickover.Workshop.StripDown.Build;

/// <summary>How a rod stands to the rest.</summary>
/// <param name="Rod">The rod.</param>
/// <param name="Off">Longer than the middle one, mm.</param>
/// <param name="Share">What that does to the air at idle of what it moves, as a part; null where the lever is not told.</param>
/// <param name="IsOutside">Whether it is outside the limit.</param>
public sealed record BuildRodVerdict(BuildRod Rod, double Off, double? Share, bool IsOutside);
