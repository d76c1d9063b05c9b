namespace Tickover.Cli.Json;

/// <summary>One cause in a <see cref="SupplyReportDiagnosis"/>.</summary>
/// <param name="Cause">Which.</param>
/// <param name="Words">In words.</param>
/// <param name="Probability">How likely it is, 0 to 1.</param>
internal sealed record SupplyReportCause(string Cause, string Words, double Probability);
