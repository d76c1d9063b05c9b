namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>What the trade usually finds; outside it a figure draws a warning.</summary>
/// <param name="LowSi">Lower end, SI.</param>
/// <param name="HighSi">Upper end, SI.</param>
/// <param name="Because">The rule in words.</param>
internal sealed record UsualBand(double LowSi, double HighSi, string Because);
