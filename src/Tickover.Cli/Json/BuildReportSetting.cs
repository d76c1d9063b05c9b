namespace Tickover.Cli.Json;

/// <summary>One thing to set.</summary>
internal sealed record BuildReportSetting(string What, string Value, string Origin, string How);
