namespace Tickover.Cli.Json;

/// <summary>One step of a fill in a <see cref="TankReportFill"/>; dips in mm.</summary>
/// <param name="PouredLitres">All that went in so far.</param>
/// <param name="DipRead">Dip read.</param>
/// <param name="DipDrawn">Dip of the shape as drawn.</param>
/// <param name="DipFitted">Dip of the shape set right.</param>
/// <param name="FittedLitres">Fuel at the dip read by the shape set right.</param>
/// <param name="BandLitres">One standard deviation of that.</param>
/// <param name="StandsOut">Whether the step does not fit the others.</param>
internal sealed record TankReportStep(double PouredLitres, double DipRead, double DipDrawn, double DipFitted, double FittedLitres, double BandLitres, bool StandsOut);
