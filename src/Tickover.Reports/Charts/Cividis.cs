using System.Globalization;

namespace Tickover.Reports.Charts;

/// <summary>The map's colours, dark to light, the same in every theme; even to the eye and to colour-blind eyes.</summary>
/// <remarks>Ten stops as in the design tokens, after J. R. Nuñez, C. R. Anderton, R. S. Renslow, PLoS ONE 13 (2018) e0199239.</remarks>
internal static class Cividis
{
    private static readonly (byte R, byte G, byte B)[] Stops =
    [
        (0x00, 0x22, 0x4e), (0x1a, 0x38, 0x6f), (0x40, 0x4c, 0x6c), (0x5b, 0x61, 0x6e), (0x75, 0x75, 0x75),
        (0x91, 0x8c, 0x78), (0xae, 0xa3, 0x71), (0xcb, 0xba, 0x65), (0xe6, 0xd1, 0x53), (0xfe, 0xe8, 0x38),
    ];

    /// <summary>The colour at a part of the scale, 0 dark to 1 light; beyond the ends the end's colour.</summary>
    internal static (byte R, byte G, byte B) At(double part)
    {
        var place = Math.Clamp(double.IsNaN(part) ? 0 : part, 0, 1) * (Stops.Length - 1);
        var low = Math.Min((int)place, Stops.Length - 2);
        var t = place - low;
        byte Mix(byte a, byte b) => (byte)Math.Round(a + t * (b - a));
        var (from, to) = (Stops[low], Stops[low + 1]);
        return (Mix(from.R, to.R), Mix(from.G, to.G), Mix(from.B, to.B));
    }

    /// <summary>The colour as #rrggbb.</summary>
    internal static Paint PaintAt(double part)
    {
        var (r, g, b) = At(part);
        return Paint.Data(string.Create(CultureInfo.InvariantCulture, $"#{r:x2}{g:x2}{b:x2}"));
    }
}
