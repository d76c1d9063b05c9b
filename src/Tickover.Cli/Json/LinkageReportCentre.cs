namespace Tickover.Cli.Json;

/// <summary>A rod in line with a lever, or nearly, in a <see cref="LinkageReport"/>.</summary>
/// <param name="Rod">Its name.</param>
/// <param name="Lever">The lever.</param>
/// <param name="Kind">Over, Dead or Near.</param>
/// <param name="Down">How far the pedal is down there, 0 to 1.</param>
/// <param name="DegreesOff">Angle between the two there.</param>
internal sealed record LinkageReportCentre(string Rod, string Lever, string Kind, double Down, double DegreesOff);
