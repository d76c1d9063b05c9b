using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;
using Tickover.Reports.Fonts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>Gives the library that writes PDF our typefaces and no others, whatever is on the machine.</summary>
internal sealed class PaperFonts : IFontResolver
{
    private const string Family = "Tickover";

    // The library takes one resolver in the life of a process and refuses a second
    private static readonly Lazy<PaperFonts> Only = new(() =>
    {
        var fonts = new PaperFonts();
        GlobalFontSettings.FontResolver = fonts;
        return fonts;
    });

    private PaperFonts()
    {
    }

    /// <summary>A typeface in a size.</summary>
    internal static XFont Font(Typeface face, double size)
    {
        _ = Only.Value;
        return new XFont($"{Family} {face}", size, XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset));
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        familyName.StartsWith(Family, StringComparison.Ordinal) ? new FontResolverInfo(familyName[(Family.Length + 1)..]) : null;

    public byte[]? GetFont(string faceName) => Enum.TryParse<Typeface>(faceName, out var face) ? FontShelf.Of(face).Bytes : null;
}
