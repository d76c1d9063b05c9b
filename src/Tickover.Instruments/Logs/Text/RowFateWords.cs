namespace Tickover.Instruments.Logs.Text;

/// <summary>Fates of rows in plain words.</summary>
internal static class RowFateWords
{
    /// <summary>The words.</summary>
    /// <param name="fate">The fate.</param>
    /// <returns>Such as "blank".</returns>
    public static string Of(RowFate fate) => fate switch
    {
        RowFate.Blank => "blank",
        RowFate.Comment => "comment",
        RowFate.HeadingsAgain => "headings repeated",
        RowFate.UnitsAgain => "units repeated",
        RowFate.CutShort => "cut short: the columns needed are not all there",
        RowFate.NoTime => "no time in it",
        RowFate.NoFigures => "neither engine speed nor mixture in it",
        RowFate.Words => "words where figures should be",
        RowFate.AnotherTable => "headings of another table",
        _ => "used",
    };
}
