namespace Tickover.Instruments.Logs;

/// <summary>Kinds of reasons to refuse a log.</summary>
public enum LogRefusedBecause
{
    /// <summary>Nothing in it.</summary>
    Empty,

    /// <summary>Not text.</summary>
    NotText,

    /// <summary>Text without a table of figures.</summary>
    NoTable,

    /// <summary>Decimal commas between commas: cells cannot be told apart.</summary>
    CommasBetweenCommas,

    /// <summary>A column needed is missing.</summary>
    ColumnMissing,

    /// <summary>A column that was told is not in the file.</summary>
    ColumnUnknown,

    /// <summary>More than one engine.</summary>
    TwoEngines,

    /// <summary>Columns needed hold the same figure throughout.</summary>
    NothingMoves,

    /// <summary>Figures that fit no unit of what they are said to be.</summary>
    Implausible,

    /// <summary>The stream failed while it was read.</summary>
    Unreadable,
}
