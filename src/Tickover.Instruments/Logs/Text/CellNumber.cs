using System.Buffers;
using System.Globalization;

namespace Tickover.Instruments.Logs.Text;

/// <summary>Reads figures as loggers and spreadsheets write them.</summary>
internal static class CellNumber
{
    private const int MostDigits = 15;                   // a double holds fifteen decimal digits without loss
    private const int LongestNumber = 64;
    private const int LongestUnit = 6;

    private static readonly double[] Powers = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

    private static readonly string[] Nothing = ["nan", "null", "none", "n/a", "na", "#n/a", "inf", "-inf", "infinity", "#div/0!", "err", "error", "----", "off", "invalid"];

    private static readonly SearchValues<char> Dashes = SearchValues.Create("-–—_.?*~");

    /// <summary>Reads a cell.</summary>
    /// <param name="cell">The cell, quotation marks and blanks and all.</param>
    /// <param name="mark">The decimal mark, '.' or ','.</param>
    /// <param name="value">The figure; NaN where there is none.</param>
    /// <returns>What stands there.</returns>
    public static CellKind Read(ReadOnlySpan<char> cell, char mark, out double value)
    {
        cell = Bare(cell);
        value = double.NaN;
        if (cell.IsEmpty)
        {
            return CellKind.Missing;
        }

        return TryPlain(cell, mark, out value) ? CellKind.Number : Slow(cell, mark, out value);
    }

    /// <summary>A cell without blanks and quotation marks round it.</summary>
    /// <param name="cell">The cell.</param>
    /// <returns>The rest.</returns>
    public static ReadOnlySpan<char> Bare(ReadOnlySpan<char> cell) =>
        cell.IsEmpty || (cell[0] > ' ' && cell[0] < '\u007F' && cell[0] is not ('"' or '\'') && cell[^1] > ' ' && cell[^1] is not ('"' or '\'') && cell[^1] < '\u007F')
            ? cell
            : cell.Trim().Trim("\"'").Trim();

    // Digits and one mark: what nearly every cell is. The whole is exact, and one division is rounded correctly.
    private static bool TryPlain(ReadOnlySpan<char> cell, char mark, out double value)
    {
        value = double.NaN;
        var i = cell[0] is '-' or '+' ? 1 : 0;
        var (digits, after, whole) = (0, -1, 0L);
        for (; i < cell.Length; i++)
        {
            var c = cell[i];
            if (c == mark && after < 0)
            {
                after = 0;
                continue;
            }

            if (!char.IsAsciiDigit(c) || ++digits > MostDigits)
            {
                return false;
            }

            whole = 10 * whole + (c - '0');
            after += after < 0 ? 0 : 1;
        }

        if (digits == 0)
        {
            return false;
        }

        value = whole / Powers[Math.Max(0, after)] * (cell[0] == '-' ? -1 : 1);
        return true;
    }

    private static CellKind Slow(ReadOnlySpan<char> cell, char mark, out double value)
    {
        value = double.NaN;
        if (IsNothing(cell))
        {
            return CellKind.Missing;
        }

        Span<char> plain = stackalloc char[LongestNumber];
        return cell.Length <= LongestNumber && Tidied(WithoutUnit(cell), mark, plain) is var length and > 0
            && double.TryParse(plain[..length], NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value)
            ? CellKind.Number
            : NoNumber(out value);
    }

    private static CellKind NoNumber(out double value)
    {
        value = double.NaN;
        return CellKind.Text;
    }

    private static bool IsNothing(ReadOnlySpan<char> cell)
    {
        if (!cell.ContainsAnyExcept(Dashes) || cell is "∞")
        {
            return true;
        }

        foreach (var word in Nothing)
        {
            if (cell.Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    // "85 °C", "12.5%": a figure with its unit behind it.
    private static ReadOnlySpan<char> WithoutUnit(ReadOnlySpan<char> cell)
    {
        var last = cell.LastIndexOfAnyInRange('0', '9');
        if (last < 0 || last == cell.Length - 1 || cell.Length - 1 - last > LongestUnit)
        {
            return cell;
        }

        var unit = cell[(last + 1)..].Trim();
        foreach (var c in unit)
        {
            if (!char.IsLetter(c) && c is not ('%' or '°' or 'º' or '/' or '"' or '.' or ','))
            {
                return cell;
            }
        }

        return cell[..(last + 1)];
    }

    // Takes thousands marks out, provided that three digits follow each, and makes the decimal mark a point.
    private static int Tidied(ReadOnlySpan<char> cell, char mark, Span<char> plain)
    {
        var length = 0;
        var thousands = mark == ',' ? '.' : ',';
        for (var i = 0; i < cell.Length; i++)
        {
            var c = cell[i] == '\u2212' ? '-' : cell[i];
            if (c == mark)
            {
                plain[length++] = '.';
            }
            else if (c == thousands || c is ' ' or '\u00A0' or '\u202F' or '\'' or '’')
            {
                if (!ThreeDigitsFollow(cell[(i + 1)..]))
                {
                    return 0;
                }
            }
            else
            {
                plain[length++] = c;
            }
        }

        return length;
    }

    private static bool ThreeDigitsFollow(ReadOnlySpan<char> rest) =>
        rest.Length >= 3 && !rest[..3].ContainsAnyExceptInRange('0', '9') && (rest.Length == 3 || !char.IsAsciiDigit(rest[3]));
}
