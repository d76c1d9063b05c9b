namespace Tickover.Reports.Paper.Pdf;

/// <summary>Turns blocks into pieces of a width.</summary>
internal sealed class BlockSetter(TypeScale type, Setter setter, double pageHeight)
{
    internal TypeScale Type => type;

    internal Setter Setter => setter;

    /// <summary>Height of the room for text on a page, pt.</summary>
    internal double PageHeight => pageHeight;

    /// <summary>All pieces of some blocks, in order.</summary>
    internal IReadOnlyList<Piece> Pieces(IReadOnlyList<Block> blocks, double width)
    {
        List<Piece> pieces = [];
        var newPage = false;
        foreach (var block in blocks)
        {
            if (block is PageBreak)
            {
                newPage = true;
                continue;
            }

            var first = pieces.Count;
            pieces.AddRange(Set(block, width));
            if (newPage && pieces.Count > first)
            {
                pieces[first] = pieces[first] with { NewPage = true };
                newPage = false;
            }
        }

        return pieces;
    }

    private IEnumerable<Piece> Set(Block block, double width) => block switch
    {
        Heading heading => WordPieces.Of(heading, this, width),
        Masthead masthead => MastheadPieces.Of(masthead, this, width),
        Paragraph paragraph => WordPieces.Of(paragraph, this, width),
        Items items => WordPieces.Of(items, this, width),
        Facts facts => TablePieces.Of(facts, this, width),
        Table table => TablePieces.Of(table, this, width),
        Figure figure => PicturePieces.Of(figure, this, width),
        Photos photos => PicturePieces.Of(photos, this, width),
        QrLink link => PicturePieces.Of(link, this, width),
        Callout callout => FramePieces.Of(callout, this, width),
        SideBySide pair => FramePieces.Of(pair, this, width),
        Together together => FramePieces.Of(together, this, width),
        Signatures signatures => MastheadPieces.Of(signatures, this, width),
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "a block that paper does not know"),
    };
}
