namespace Tickover.Workshop.StripDown.Wear;

/// <summary>What a needle valve let past.</summary>
/// <param name="MillilitresAnHour">What seeped, ml/h; null where only a vacuum was held.</param>
/// <param name="HeadMillimetres">Head of fuel above it, mm.</param>
/// <param name="HoldSeconds">How long it held a hand vacuum, s; null where it was not tried.</param>
/// <param name="Measured">What was read, in words.</param>
public sealed record NeedleTest(double? MillilitresAnHour, double HeadMillimetres, double? HoldSeconds, string Measured);
