namespace Tickover.Workshop.Gauges;

/// <summary>What there is, what the needle says and what is the best estimate, at one moment of a drive.</summary>
/// <param name="Seconds">Time since the beginning, s.</param>
/// <param name="ThereLitres">Fuel in both tanks, L.</param>
/// <param name="NeedleLitres">What the needle says, L.</param>
/// <param name="EstimateLitres">Best estimate from the needle, L.</param>
/// <param name="LowLitres">Lower end of its 90 % band, L.</param>
/// <param name="HighLitres">Upper end of its 90 % band, L.</param>
public sealed record GaugeMoment(double Seconds, double ThereLitres, double NeedleLitres, double EstimateLitres, double LowLitres, double HighLitres);
