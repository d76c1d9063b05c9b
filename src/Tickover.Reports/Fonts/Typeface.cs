namespace Tickover.Reports.Fonts;

/// <summary>The typefaces that paper is set in, each a file of this library.</summary>
internal enum Typeface
{
    /// <summary>Running text.</summary>
    Regular,

    /// <summary>Headings and what matters.</summary>
    Bold,

    /// <summary>Words that somebody else said.</summary>
    Italic,

    /// <summary>Signs the others lack: the true minus, arrows, at most.</summary>
    Signs,
}
