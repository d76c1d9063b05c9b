namespace Tickover.Cli.Json;

/// <summary>One position of the pedal in a <see cref="LinkageReport"/>, figures in order of its carburettors.</summary>
/// <param name="Down">How far the pedal is down, 0 to 1.</param>
/// <param name="PedalDegrees">Turn of the pedal's shaft, degrees.</param>
/// <param name="Degrees">Angles of the plates, degrees.</param>
/// <param name="AirParts">Air against the mean by the plates' gaps, less one.</param>
/// <param name="LimitPart">Allowed either way.</param>
internal sealed record LinkageReportMoment(double Down, double PedalDegrees, IReadOnlyList<double> Degrees, IReadOnlyList<double> AirParts, double LimitPart);
