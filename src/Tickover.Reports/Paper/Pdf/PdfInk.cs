using System.Collections.Concurrent;
using System.Globalization;
using PdfSharp.Drawing;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>Paints as the PDF library has them.</summary>
internal static class PdfInk
{
    private static readonly ConcurrentDictionary<string, (byte R, byte G, byte B)> Read = new(StringComparer.Ordinal);

    internal static XBrush Brush(Paint paint, double opacity = 1) => new XSolidBrush(Colour(paint, opacity));

    internal static XPen Pen(Paint paint, double width, double opacity = 1) =>
        new(Colour(paint, opacity), width) { LineJoin = XLineJoin.Round };

    private static XColor Colour(Paint paint, double opacity)
    {
        var (r, g, b) = Read.GetOrAdd(PaperColours.Of(paint), Parts);
        return XColor.FromArgb((int)Math.Round(255 * Math.Clamp(opacity, 0, 1)), r, g, b);
    }

    private static (byte R, byte G, byte B) Parts(string hex)
    {
        var digits = hex.Length == 4 ? string.Concat(hex.Skip(1).SelectMany(c => new[] { c, c })) : hex[1..];
        byte At(int i) => byte.Parse(digits.AsSpan(i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return (At(0), At(2), At(4));
    }
}
