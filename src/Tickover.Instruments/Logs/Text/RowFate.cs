namespace Tickover.Instruments.Logs.Text;

/// <summary>Why a row is not used.</summary>
internal enum RowFate
{
    /// <summary>It is used.</summary>
    Kept,

    /// <summary>Nothing in it.</summary>
    Blank,

    /// <summary>A comment.</summary>
    Comment,

    /// <summary>The headings again.</summary>
    HeadingsAgain,

    /// <summary>The units again.</summary>
    UnitsAgain,

    /// <summary>Ends before the columns needed.</summary>
    CutShort,

    /// <summary>No time in it.</summary>
    NoTime,

    /// <summary>Neither engine speed nor mixture in it.</summary>
    NoFigures,

    /// <summary>Words where figures should be.</summary>
    Words,

    /// <summary>Headings of another table.</summary>
    AnotherTable,
}
