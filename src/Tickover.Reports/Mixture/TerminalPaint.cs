using System.Globalization;

namespace Tickover.Reports.Mixture;

/// <summary>Escape sequences for colours (ECMA-48 SGR; 38 and 48 with 2 or 5 after ISO 8613-6).</summary>
internal static class TerminalPaint
{
    internal const string Reset = "\u001b[0m";

    // xterm's colour cube: six levels each way from colour 16 on
    private const int CubeStart = 16;
    private static readonly int[] CubeLevels = [0, 95, 135, 175, 215, 255];

    /// <summary>Upper half in one colour, lower half in another.</summary>
    internal static string Halves((byte R, byte G, byte B) upper, (byte R, byte G, byte B) lower, TerminalColours colours) =>
        $"\u001b[{Code(38, upper, colours)};{Code(48, lower, colours)}m";

    /// <summary>Left half in one colour, right half in another.</summary>
    internal static string Sides((byte R, byte G, byte B) left, (byte R, byte G, byte B) right, TerminalColours colours) =>
        Halves(left, right, colours);

    /// <summary>Letters on a ground, black or white, whichever reads better.</summary>
    internal static string On((byte R, byte G, byte B) ground, TerminalColours colours)
    {
        // Weights of ITU-R BT.709 on the coded values, enough to choose between black and white
        var light = 0.2126 * ground.R + 0.7152 * ground.G + 0.0722 * ground.B > 120;
        return $"\u001b[{(light ? "30" : "97")};{Code(48, ground, colours)}m";
    }

    private static string Code(int layer, (byte R, byte G, byte B) colour, TerminalColours colours) =>
        colours == TerminalColours.TrueColour
            ? string.Create(CultureInfo.InvariantCulture, $"{layer};2;{colour.R};{colour.G};{colour.B}")
            : string.Create(CultureInfo.InvariantCulture, $"{layer};5;{CubeStart + 36 * Nearest(colour.R) + 6 * Nearest(colour.G) + Nearest(colour.B)}");

    private static int Nearest(byte value) => Enumerable.Range(0, CubeLevels.Length).MinBy(k => Math.Abs(CubeLevels[k] - value));
}
