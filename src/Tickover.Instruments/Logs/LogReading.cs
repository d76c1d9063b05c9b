using Tickover.Workshop.Logs;

namespace Tickover.Instruments.Logs;

/// <summary>What came of reading a log: the log, or why there is none; and in any case what was seen.</summary>
public sealed record LogReading
{
    /// <summary>The log; null where it was refused.</summary>
    public RoadLog? Log { get; init; }

    /// <summary>Why there is no log; null where there is one.</summary>
    public LogRefusal? Refusal { get; init; }

    /// <summary>How the text is written, such as "UTF-8, semicolons, decimal comma, headings in line 4, units in line 5".</summary>
    public string Form { get; init; } = string.Empty;

    /// <summary>All columns in order, and what each was taken for.</summary>
    public IReadOnlyList<ColumnChoice> Columns { get; init; } = [];

    /// <summary>Rows of the file after the headings.</summary>
    public long Rows { get; init; }

    /// <summary>Rows used.</summary>
    public long RowsKept { get; init; }

    /// <summary>Rows averaged into one sample: 1, or a power of two where the file has more rows than memory was given.</summary>
    public int RowsPerSample { get; init; } = 1;

    /// <summary>Rows not used, by reason.</summary>
    public IReadOnlyList<LogCount> Dropped { get; init; } = [];

    /// <summary>What was mended, by kind.</summary>
    public IReadOnlyList<LogCount> Repairs { get; init; } = [];

    /// <summary>Parts the file seems to consist of; none where it is of one piece.</summary>
    public IReadOnlyList<LogPart> Parts { get; init; } = [];
}
