using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Tickover.Reports.Paper.Pdf;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.Paper;

/// <summary>Writes a document as PDF: text that can be searched, pictures as lines, every font in the file.</summary>
/// <remarks>Safe for several threads. Two writings of one document differ in the file's identifier and the names of its fonts.</remarks>
public static class PaperPdf
{
    // Steps in which the type of a one-sheet document shrinks; the last is the smallest allowed
    private static readonly double[] Factors = [1, 0.95, 0.9, 0.85, 0.8, 0.76, 0.72];

    /// <summary>Writes the document.</summary>
    /// <param name="document">What to write.</param>
    /// <param name="size">The paper.</param>
    /// <param name="output">Where to; left open.</param>
    /// <exception cref="ArgumentNullException">A document or an output is missing.</exception>
    public static void Write(PaperDocument document, PaperSize size, Stream output)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(output);
        var shape = PageShape.Of(size);
        var pages = Pages(document, shape);
        using var pdf = new PdfDocument { Language = document.Language };
        pdf.Info.Title = document.Title;
        pdf.Info.Author = document.Author;
        pdf.Info.Subject = document.Foot;
        pdf.Info.Creator = "Tickover";
        pdf.ViewerPreferences.DisplayDocTitle = true;
        var fonts = new FontRack();
        for (var i = 0; i < pages.Count; i++)
        {
            var page = pdf.AddPage();
            (page.Width, page.Height) = (XUnit.FromPoint(shape.Width), XUnit.FromPoint(shape.Height));
            Draw(pdf, page, pages[i], fonts);
            using var graphics = XGraphics.FromPdfPage(page, XGraphicsPdfPageOptions.Append);
            PageFoot.Draw(new PageCanvas(graphics, fonts), shape, document.Foot, $"Page {i + 1} of {pages.Count}");
        }

        pdf.Save(output, closeStream: false);
    }

    private static void Draw(PdfDocument pdf, PdfPage page, IReadOnlyList<Placed> pieces, FontRack fonts)
    {
        using var graphics = XGraphics.FromPdfPage(page);
        var canvas = new PageCanvas(graphics, fonts);
        foreach (var placed in pieces)
        {
            placed.Piece.Draw(canvas, PageShape.Margin, PageShape.Margin + placed.Top);
            if (placed.Piece.Outline is { } outline)
            {
                pdf.Outlines.Add(outline, page, opened: true);
            }
        }
    }

    private static IReadOnlyList<IReadOnlyList<Placed>> Pages(PaperDocument document, PageShape shape)
    {
        if (!document.OneSheet)
        {
            return Flow(document.Blocks, shape, 1);
        }

        IReadOnlyList<IReadOnlyList<Placed>> pages = [];
        foreach (var factor in Factors)
        {
            pages = Flow(document.Blocks, shape, factor);
            if (pages.Count == 1)
            {
                return pages;
            }
        }

        return [OneSheet.Cut(pages[0], [.. pages.Skip(1).SelectMany(p => p)], shape, new TypeScale(Factors[^1]))];
    }

    private static IReadOnlyList<IReadOnlyList<Placed>> Flow(IReadOnlyList<Block> blocks, PageShape shape, double factor)
    {
        var setter = new Setter();
        var set = new BlockSetter(new TypeScale(factor), setter, shape.TextHeight);
        var pieces = set.Pieces(blocks, shape.TextWidth);
        if (setter.Missing.Count > 0)
        {
            pieces = [.. pieces, .. set.Pieces([Paragraph.Small(MissingNote(setter.Missing.Count))], shape.TextWidth)];
        }

        return new PageFlow(shape.TextHeight).Place(pieces);
    }

    private static string MissingNote(int count) =>
        count == 1
            ? "One character of this document is in no typeface of this paper and is printed as \u201c?\u201d; the page on the screen shows it."
            : $"{count} characters of this document are in no typeface of this paper and are printed as \u201c?\u201d; the page on the screen shows them.";
}
