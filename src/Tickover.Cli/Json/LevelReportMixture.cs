namespace Tickover.Cli.Json;

/// <summary>What a millimetre more fuel does somewhere.</summary>
internal sealed record LevelReportMixture(string Regime, double Rpm, double Throttle, double Signal, double FuelPart, double? Lambda, double? LambdaHigher);
