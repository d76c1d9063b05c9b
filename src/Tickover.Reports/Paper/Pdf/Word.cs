namespace Tickover.Reports.Paper.Pdf;

/// <summary>Letters that stay on one line.</summary>
internal sealed record Word
{
    internal List<Glyphs> Parts { get; } = [];

    /// <summary>Whether a space parts it from the word before.</summary>
    internal bool Spaced { get; init; }

    /// <summary>Whether it begins a line.</summary>
    internal bool NewLine { get; init; }

    internal double Width => Parts.Sum(p => p.Width);
}
