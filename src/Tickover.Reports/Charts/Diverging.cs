using System.Globalization;

namespace Tickover.Reports.Charts;

/// <summary>Colours of a change, the same in every theme: richer blue, none nearly white, leaner vermilion (M. Okabe, K. Ito, 2008).</summary>
internal static class Diverging
{
    private static readonly (byte R, byte G, byte B) Richer = (0x00, 0x72, 0xb2);
    private static readonly (byte R, byte G, byte B) None = (0xf4, 0xf4, 0xf2);
    private static readonly (byte R, byte G, byte B) Leaner = (0xd5, 0x5e, 0x00);

    /// <summary>The colour at −1 (most richer) to 1 (most leaner).</summary>
    internal static Paint PaintAt(double part)
    {
        var t = Math.Clamp(double.IsNaN(part) ? 0 : part, -1, 1);
        var end = t < 0 ? Richer : Leaner;
        byte Mix(byte from, byte to) => (byte)Math.Round(from + Math.Abs(t) * (to - from));
        return Paint.Data(string.Create(
            CultureInfo.InvariantCulture, $"#{Mix(None.R, end.R):x2}{Mix(None.G, end.G):x2}{Mix(None.B, end.B):x2}"));
    }
}
