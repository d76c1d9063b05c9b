namespace Tickover.Cli.Json;

/// <summary>What a barrel's leaks come to.</summary>
internal sealed record WearReportBarrel(string Where, string Carburettor, double Leak, double Share, double? PlateDegrees, double OverMiddle, string Worst, string Words);
