namespace Tickover.Cli.Input;

/// <summary>What a table of gas readings held.</summary>
/// <param name="Readings">The readings, in order.</param>
/// <param name="Refused">The rows that are none, each with its reason.</param>
/// <param name="UnusedColumns">Headings nothing was taken from.</param>
internal sealed record GasTableRead(IReadOnlyList<GasRow> Readings, IReadOnlyList<RefusedRow> Refused, IReadOnlyList<string> UnusedColumns);
