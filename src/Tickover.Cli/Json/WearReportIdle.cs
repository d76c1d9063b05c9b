namespace Tickover.Cli.Json;

/// <summary>The engine at idle.</summary>
internal sealed record WearReportIdle(double Rpm, double Air, double Depression, double? PlateDegrees, string Origin, string Doubt);
