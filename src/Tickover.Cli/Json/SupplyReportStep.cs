namespace Tickover.Cli.Json;

/// <summary>A step of a working.</summary>
internal sealed record SupplyReportStep(string Title, string NumbersIn, string Answer, string Note);
