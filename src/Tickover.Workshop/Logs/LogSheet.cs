namespace Tickover.Workshop.Logs;

/// <summary>How a log's file was read and what it shows over its time: kept with the run, since the file itself is not.</summary>
public sealed record LogSheet
{
    /// <summary>How the text is written: encoding, separator, decimal mark, rows of headings and units.</summary>
    public string Form { get; init; } = "";

    /// <summary>The columns in the file's order: all that are used, and of the others as many as fit a page.</summary>
    public IReadOnlyList<LogColumn> Columns { get; init; } = [];

    /// <summary>Headings of the columns beyond those, not used.</summary>
    public IReadOnlyList<string> FurtherColumns { get; init; } = [];

    /// <summary>Rows of the file after the headings.</summary>
    public long Rows { get; init; }

    /// <summary>Rows used.</summary>
    public long RowsKept { get; init; }

    /// <summary>Rows not used, by reason.</summary>
    public IReadOnlyList<LogRows> LeftOut { get; init; } = [];

    /// <summary>What was mended, by kind.</summary>
    public IReadOnlyList<LogRows> Mended { get; init; } = [];

    /// <summary>Rows a second as told, for a file without a clock; null where it has one.</summary>
    public double? RowsPerSecond { get; init; }

    /// <summary>Parts the file seems to consist of; none where it is of one piece.</summary>
    public IReadOnlyList<LogPart> Parts { get; init; } = [];

    /// <summary>The part that was taken, from 1; null for the whole.</summary>
    public int? PartTaken { get; init; }

    /// <summary>The trace; null where the log was refused.</summary>
    public LogTrace? Trace { get; init; }

    /// <summary>What it says of the accelerator pump; null where the log was refused.</summary>
    public LogPump? Pump { get; init; }

    /// <summary>Notes to remember for files with the same headings; empty where nothing was told. Opaque to all but the reader of logs.</summary>
    public string Layout { get; init; } = "";

    /// <summary>What such files are recognised by.</summary>
    public string LayoutKey { get; init; } = "";
}
