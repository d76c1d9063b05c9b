namespace Tickover.Workshop.Logs;

/// <summary>What a person says of a log before it is read.</summary>
public sealed record LogHints
{
    /// <summary>Columns told, as <c>COLUMN=QUANTITY:UNIT</c>; "#3" for the third column.</summary>
    public IReadOnlyList<string> Columns { get; init; } = [];

    /// <summary>Layouts remembered of earlier files, as <see cref="LogSheet.Layout"/> gives them.</summary>
    public IReadOnlyList<string> Layouts { get; init; } = [];

    /// <summary>Rows a second, for a file without a clock; null where it has one.</summary>
    public double? RowsPerSecond { get; init; }

    /// <summary>Part of the file to take, from 1; null for the whole.</summary>
    public int? Part { get; init; }
}
