namespace Tickover.Cli.Json;

/// <summary>What a turn has been worth.</summary>
/// <param name="Adjuster">Key of what was turned.</param>
/// <param name="HeldRpm">Speed held, rpm; null at idle.</param>
/// <param name="PerTurn">kg/h a turn, as learned.</param>
/// <param name="Band">Half width of its 90 % band.</param>
/// <param name="Expected">kg/h a turn by physics alone.</param>
/// <param name="TimesTurned">How often it was turned.</param>
internal sealed record BalanceGain(string Adjuster, double? HeldRpm, double PerTurn, double Band, double Expected, int TimesTurned);
