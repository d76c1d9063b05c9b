using System.Buffers;

namespace Tickover.Instruments.Logs.Text;

/// <summary>Tells a decimal comma from a thousands comma by what stands round it in many cells.</summary>
internal static class DecimalMark
{
    private static readonly SearchValues<char> OfFigures = SearchValues.Create("0123456789+-.,");

    /// <summary>The mark.</summary>
    /// <param name="rows">The rows.</param>
    /// <returns>'.' or ','; '.' where nothing tells.</returns>
    public static char Of(IEnumerable<string[]> rows)
    {
        var (comma, point) = (0, 0);
        foreach (var cell in rows.SelectMany(r => r))
        {
            comma += Speaks(cell, ',', '.') ? 1 : 0;
            point += Speaks(cell, '.', ',') ? 1 : 0;
        }

        return comma > point ? ',' : '.';
    }

    // A mark is decimal if it stands once, among figures alone, and cannot part thousands.
    private static bool Speaks(string cell, char mark, char other)
    {
        var at = cell.IndexOf(mark, StringComparison.Ordinal);
        if (at < 0 || at != cell.LastIndexOf(mark) || cell.AsSpan().ContainsAnyExcept(OfFigures))
        {
            return false;
        }

        var before = cell.AsSpan(0, at).TrimStart("+-");
        return cell.Length - at - 1 != 3 || before is "0" or "" || before.Length > 3 || (before.Contains(other) && !before.StartsWith([other]));
    }
}
