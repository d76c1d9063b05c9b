namespace Tickover.Cli.Json;

/// <summary>What the readings say in a <see cref="SupplyReport"/>.</summary>
/// <param name="Words">What it comes to.</param>
/// <param name="Causes">The causes, the likeliest first.</param>
/// <param name="Misfit">Largest difference from the likeliest cause in units of the reading's uncertainty; above 3 nothing listed explains them.</param>
/// <param name="Next">What to look at next; null where nothing would tell much.</param>
internal sealed record SupplyReportDiagnosis(string Words, IReadOnlyList<SupplyReportCause> Causes, double Misfit, string? Next);
