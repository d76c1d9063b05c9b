namespace Tickover.Reports.Paper;

/// <summary>A paragraph.</summary>
/// <param name="Words">What it says.</param>
internal sealed record Paragraph(Prose Words) : Block
{
    internal Voice Voice { get; init; }

    internal static Paragraph Of(string text) => new(Prose.Of(text));

    internal static Paragraph Small(string text) => new(Prose.Of(text)) { Voice = Voice.Small };
}
