namespace Tickover.Cli.Json;

/// <summary>What <c>gas FILE --json</c> prints; its form is docs/schemas/gas-table.schema.json.</summary>
internal sealed record GasTableDocument
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/gas-table/1";

    /// <summary>The readings judged, in the order of the file.</summary>
    public required IReadOnlyList<GasLine> Records { get; init; }

    /// <summary>Rows kept out, each with its reason.</summary>
    public required IReadOnlyList<GasRefusedLine> Refused { get; init; }

    /// <summary>Headings nothing was taken from.</summary>
    public required IReadOnlyList<string> UnusedColumns { get; init; }
}
