namespace Tickover.Cli.Json;

/// <summary>One log.</summary>
internal sealed record LoggedFile
{
    /// <summary>The file as given.</summary>
    public required string File { get; init; }

    /// <summary>Why it cannot be used and what would do; null where it can.</summary>
    public string? Refused { get; init; }

    /// <summary>Kind of the refusal; null where there is none.</summary>
    public string? RefusedBecause { get; init; }

    /// <summary>How the text is written.</summary>
    public required string Form { get; init; }

    /// <summary>The columns and what each was taken for.</summary>
    public required IReadOnlyList<LoggedColumn> Columns { get; init; }

    /// <summary>Rows after the headings.</summary>
    public required long Rows { get; init; }

    /// <summary>Rows used.</summary>
    public required long RowsKept { get; init; }

    /// <summary>Rows averaged into one sample.</summary>
    public required int RowsPerSample { get; init; }

    /// <summary>Rows left out, by reason.</summary>
    public required IReadOnlyList<LoggedCount> Dropped { get; init; }

    /// <summary>What was mended.</summary>
    public required IReadOnlyList<LoggedCount> Repairs { get; init; }

    /// <summary>Parts the file seems to consist of; none where it is of one piece.</summary>
    public required IReadOnlyList<LoggedPart> Parts { get; init; }

    /// <summary>What it says of the accelerator pump; null where the log was refused.</summary>
    public LoggedPump? Pump { get; init; }

    /// <summary>Transport delay; null where the log was refused.</summary>
    public LoggedDelay? Delay { get; init; }

    /// <summary>Throttle figures with the pedal up and wide open; null where they are not needed.</summary>
    public IReadOnlyList<double>? ThrottleMarks { get; init; }

    /// <summary>The points.</summary>
    public required IReadOnlyList<LoggedPoint> Points { get; init; }

    /// <summary>The stretches.</summary>
    public required IReadOnlyList<LoggedStretch> Stretches { get; init; }

    /// <summary>Starts of fast openings, s.</summary>
    public required IReadOnlyList<double> TipIns { get; init; }

    /// <summary>Time that made no point, by reason.</summary>
    public required IReadOnlyList<LoggedTime> LeftOut { get; init; }

    /// <summary>What speaks against the log.</summary>
    public required IReadOnlyList<string> Doubts { get; init; }
}
