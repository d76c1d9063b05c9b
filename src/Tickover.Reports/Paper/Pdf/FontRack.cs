using PdfSharp.Drawing;
using Tickover.Reports.Fonts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>The fonts of one document; each size is made once.</summary>
internal sealed class FontRack
{
    private readonly Dictionary<(Typeface, double), XFont> _fonts = [];

    internal XFont Font(Typeface face, double size)
    {
        if (!_fonts.TryGetValue((face, size), out var font))
        {
            font = PaperFonts.Font(face, size);
            _fonts[(face, size)] = font;
        }

        return font;
    }
}
