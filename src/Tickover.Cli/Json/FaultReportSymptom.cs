namespace Tickover.Cli.Json;

/// <summary>A symptom that was told.</summary>
internal sealed record FaultReportSymptom(string Key, string Words, string Origin, string Confidence);
