namespace Tickover.Cli.Json;

/// <summary>A cause in the ranking. Chances: now, before the first answer, before any symptom by closed cases, and the same without them.</summary>
internal sealed record FaultReportRank(string Cause, string Words, string Where, string ToDo, string Stage, double Chance, double AtFirst, double Learned, double Prior, string InWords);
