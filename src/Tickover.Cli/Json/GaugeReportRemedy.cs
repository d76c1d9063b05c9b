namespace Tickover.Cli.Json;

/// <summary>A remedy of <see cref="GaugeReport"/>.</summary>
internal sealed record GaugeReportRemedy(string Key, string Name, double RmsLitres, double WorstLitres, int FalseLamps, double? MinutesToLevel, double DrySeconds);
