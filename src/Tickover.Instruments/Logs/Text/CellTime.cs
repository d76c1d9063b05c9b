using System.Globalization;

namespace Tickover.Instruments.Logs.Text;

/// <summary>Reads times and dates written out, as seconds.</summary>
internal static class CellTime
{
    private const double Day = 86400;

    /// <summary>Reads "10:20:30.5", "20:30.5", "2026-05-01T10:20:30Z", "1.5.2026 10:20:30" and their like.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="seconds">Seconds from midnight, or from the first day there is where a date stands with it.</param>
    /// <returns>Whether it is a time.</returns>
    public static bool TryRead(ReadOnlySpan<char> cell, out double seconds)
    {
        cell = CellNumber.Bare(cell);
        seconds = double.NaN;
        if (cell.Length is < 4 or > 40 || !char.IsAsciiDigit(cell[0]))
        {
            return false;
        }

        var split = cell.IndexOfAny('T', ' ');
        if (split > 0 && cell[..split].ContainsAny('-', '/', '.') && !cell[..split].Contains(':'))
        {
            return TryDay(cell[..split], out var day) && TryClock(cell[(split + 1)..].Trim(), out seconds) && Add(ref seconds, day * Day);
        }

        return TryClock(cell, out seconds);
    }

    private static bool Add(ref double seconds, double more)
    {
        seconds += more;
        return true;
    }

    private static bool TryClock(ReadOnlySpan<char> text, out double seconds)
    {
        seconds = double.NaN;
        var shift = TakeZone(ref text) + TakeAfternoon(ref text);
        Span<Range> parts = stackalloc Range[4];
        var count = text.Split(parts, ':');
        if (count is < 2 or > 3)
        {
            return false;
        }

        var sum = 0.0;
        for (var i = 0; i < count; i++)
        {
            if (CellNumber.Read(text[parts[i]], text[parts[i]].Contains(',') ? ',' : '.', out var part) != CellKind.Number || part is < 0 or >= 100)
            {
                return false;
            }

            sum = 60 * sum + part;
        }

        seconds = sum + shift;
        return true;
    }

    private static double TakeZone(ref ReadOnlySpan<char> text)
    {
        if (text.EndsWith("Z", StringComparison.OrdinalIgnoreCase))
        {
            text = text[..^1];
            return 0;
        }

        var sign = text.LastIndexOfAny('+', '-');
        if (sign <= 0 || !CellNumber.Read(text[(sign + 1)..].ToString().Replace(":", string.Empty, StringComparison.Ordinal), '.', out var zone).Equals(CellKind.Number))
        {
            return 0;
        }

        var hours = zone >= 100 ? Math.Floor(zone / 100) + zone % 100 / 60 : zone;
        var east = text[sign] == '+';
        text = text[..sign].TrimEnd();
        return (east ? -1 : 1) * hours * 3600;
    }

    private static double TakeAfternoon(ref ReadOnlySpan<char> text)
    {
        var afternoon = text.EndsWith("PM", StringComparison.OrdinalIgnoreCase);
        if (!afternoon && !text.EndsWith("AM", StringComparison.OrdinalIgnoreCase))
        {
            return 0;
        }

        text = text[..^2].TrimEnd();
        var noon = text.StartsWith("12", StringComparison.Ordinal);
        return afternoon ? (noon ? 0 : Day / 2) : (noon ? -Day / 2 : 0);
    }

    private static bool TryDay(ReadOnlySpan<char> text, out double day)
    {
        string[] forms = ["yyyy-M-d", "yyyy/M/d", "d.M.yyyy", "d/M/yyyy", "M/d/yyyy", "d-M-yyyy", "d.M.yy", "d/M/yy"];
        var known = DateTime.TryParseExact(text, forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date);
        day = known ? (date - DateTime.UnixEpoch).TotalDays : 0;
        return known;
    }
}
