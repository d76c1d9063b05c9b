using Tickover.Workshop.Visits;

namespace Tickover.Reports.Paper;

/// <summary>Words of one look.</summary>
/// <param name="Text">The words, already fit to be set; see <see cref="PaperText"/>.</param>
internal sealed record Run(string Text)
{
    internal bool Bold { get; init; }

    internal bool Italic { get; init; }

    /// <summary>The mark of a severity that stands before the words; its word is part of the text.</summary>
    internal Severity? Mark { get; init; }

    /// <summary>Where the words lead; null for words alone.</summary>
    internal string? Address { get; init; }
}
