namespace Tickover.Cli.Json;

/// <summary>A row kept out.</summary>
/// <param name="Line">Line of the file, from 1.</param>
/// <param name="Reason">Why.</param>
internal sealed record GasRefusedLine(int Line, string Reason);
