namespace Tickover.Cli.Json;

/// <summary>A paragraph of <see cref="GaugeReport"/>.</summary>
internal sealed record GaugeReportAdvice(string Heading, string Words);
