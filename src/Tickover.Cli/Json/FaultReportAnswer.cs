namespace Tickover.Cli.Json;

/// <summary>An answer a test may have.</summary>
internal sealed record FaultReportAnswer(string Key, string Words);
