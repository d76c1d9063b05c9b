namespace Tickover.Records.Carrying;

/// <summary>What an export says of itself.</summary>
/// <param name="Format">Always "tickover-record".</param>
/// <param name="Version">Version of the form.</param>
/// <param name="Record">Number of the record it came from.</param>
/// <param name="ExportedAt">When it was made, by the clock of the machine.</param>
/// <param name="Car">The car that alone is in it, by its slug; null where everything is.</param>
/// <param name="LastAct">Number of the last act in it.</param>
/// <param name="Counts">Items by kind, acts and pictures.</param>
/// <param name="Entries">Every other entry, by name, with its size and its SHA-256.</param>
public sealed record ExportManifest(
    string Format,
    int Version,
    Guid Record,
    DateTimeOffset ExportedAt,
    string? Car,
    long LastAct,
    IReadOnlyDictionary<string, int> Counts,
    IReadOnlyDictionary<string, ExportEntry> Entries);
