namespace Tickover.Cli.Json;

/// <summary>A rod against the rest.</summary>
internal sealed record BuildReportRod(string Where, double Length, double Off, double? IdleShare, bool IsOutside);
