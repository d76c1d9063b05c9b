namespace Tickover.Reports.Paper;

/// <summary>How loud a paragraph speaks.</summary>
internal enum Voice
{
    /// <summary>As usual.</summary>
    Body,

    /// <summary>What is to be read first.</summary>
    Lead,

    /// <summary>Notes below a table or a picture.</summary>
    Small,
}
