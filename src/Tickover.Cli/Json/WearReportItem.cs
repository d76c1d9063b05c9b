namespace Tickover.Cli.Json;

/// <summary>One thing judged.</summary>
internal sealed record WearReportItem(string Where, string Kind, string Grade, string Measured, string Limit, double? Air, double? Least, double? Most, double? Share, string Words);
