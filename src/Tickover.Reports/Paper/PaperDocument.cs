namespace Tickover.Reports.Paper;

/// <summary>A document for an owner or for the car, told once and written by <see cref="PaperPdf"/> and <see cref="PaperHtml"/>.</summary>
public sealed record PaperDocument
{
    /// <summary>Title, in the file's properties and the browser's tab.</summary>
    public required string Title { get; init; }

    /// <summary>Who wrote it: the workshop.</summary>
    public required string Author { get; init; }

    /// <summary>BCP 47 language tag, such as "en-GB".</summary>
    public required string Language { get; init; }

    /// <summary>What stands at the foot of every page beside its number: document, car, date.</summary>
    public required string Foot { get; init; }

    /// <summary>Suggested name of a file, without its ending.</summary>
    public required string FileName { get; init; }

    /// <summary>Whether all of it has to fit on one sheet: smaller type then, and a last line that says what was left out.</summary>
    public bool OneSheet { get; init; }

    /// <summary>What it says, in order.</summary>
    internal IReadOnlyList<Block> Blocks { get; init; } = [];
}
