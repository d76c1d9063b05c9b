namespace Tickover.Cli.Json;

/// <summary>The needle at one filling in a <see cref="SenderReportCure"/>.</summary>
/// <param name="Litres">Fuel in.</param>
/// <param name="Needle">Where it stands, 0 at E to 1 at F.</param>
/// <param name="Wanted">Where it should.</param>
internal sealed record SenderReportPoint(double Litres, double Needle, double Wanted);
