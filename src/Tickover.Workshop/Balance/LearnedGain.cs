using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance;

/// <summary>What a turn of an adjuster does at idle or at a held speed, as known by now.</summary>
/// <param name="Adjuster">The adjuster.</param>
/// <param name="HeldRpm">Speed, rpm; null for idle.</param>
/// <param name="PerTurn">Change of its barrels' air a turn, kg/h.</param>
/// <param name="Band">Half the width of the 90 % band, kg/h a turn.</param>
/// <param name="Expected">What physics expected before anything was turned, kg/h a turn.</param>
/// <param name="TimesTurned">How often it was turned.</param>
public sealed record LearnedGain(Adjuster Adjuster, double? HeldRpm, double PerTurn, double Band, double Expected, int TimesTurned);
