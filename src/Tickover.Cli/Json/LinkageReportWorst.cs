namespace Tickover.Cli.Json;

/// <summary>Largest mismatch in a <see cref="LinkageReport"/>, as a part of the mean's air.</summary>
/// <param name="IdlePart">With the pedal up.</param>
/// <param name="OffIdlePart">Off idle.</param>
/// <param name="OffIdleDown">Where that is, 0 to 1.</param>
/// <param name="Carburettor">Name of the one furthest off there.</param>
internal sealed record LinkageReportWorst(double IdlePart, double OffIdlePart, double OffIdleDown, string Carburettor);
