namespace Tickover.Cli.Json;

/// <summary>One family in a <see cref="SenderReport"/>.</summary>
/// <param name="Family">Its ohms, empty to full.</param>
/// <param name="Probability">0 to 1.</param>
internal sealed record SenderReportFamily(string Family, double Probability);
