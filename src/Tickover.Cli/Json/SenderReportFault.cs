namespace Tickover.Cli.Json;

/// <summary>One fault in a <see cref="SenderReport"/>.</summary>
/// <param name="Fault">Which.</param>
/// <param name="Probability">0 to 1.</param>
/// <param name="Sender">Family of the sender in the best case of it.</param>
/// <param name="Gauge">Family of the gauge in it.</param>
internal sealed record SenderReportFault(string Fault, double Probability, string Sender, string Gauge);
