using System.Globalization;
using System.Text.RegularExpressions;

namespace Tickover.Workshop.Cars.Text;

/// <summary>Reads and shows rows of emulsion holes ("2 x 1 mm at 6 mm") and progression holes ("1.1 mm at 0.8 mm").</summary>
internal static partial class HoleText
{
    /// <summary>How an emulsion row is written.</summary>
    public const string RowForm = "\"2 x 1 mm at 6 mm\": holes, their diameter, depth below the fuel level at rest (negative above it)";

    /// <summary>How a progression hole is written.</summary>
    public const string HoleForm = "\"1.1 mm at 0.8 mm\": diameter, distance above the seated plate's edge";

    /// <summary>Most rows or holes in one list.</summary>
    public const int Most = 16;

    private const int LongestText = 60;
    private const int MostHolesInARow = 24;
    private const double SmallestHoleMetres = 0.2e-3;
    private const double LargestHoleMetres = 5e-3;
    private const double HighestRowMetres = -30e-3;
    private const double DeepestRowMetres = 120e-3;
    private const double FarthestHoleMetres = 40e-3;

    /// <summary>What a row may be.</summary>
    public static string RowRange => string.Create(CultureInfo.InvariantCulture, $"1 to {MostHolesInARow} holes of 0.2 to 5 mm, at -30 to 120 mm");

    /// <summary>What a progression hole may be.</summary>
    public static string HoleRange => "0.2 to 5 mm, at 0 to 40 mm";

    /// <summary>Reads a row of emulsion holes.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The row, or null where it is none or out of range.</returns>
    public static CarHoleRow? Row(string text)
    {
        var match = text.Length <= LongestText ? RowPattern().Match(text) : Match.Empty;
        return match.Success
            && Length(match.Groups["size"].Value, SmallestHoleMetres, LargestHoleMetres) is { } size
            && Length(match.Groups["place"].Value, HighestRowMetres, DeepestRowMetres) is { } depth
            && int.Parse(match.Groups["count"].ValueSpan, CultureInfo.InvariantCulture) is >= 1 and <= MostHolesInARow and var count
                ? new CarHoleRow(depth, count, size)
                : null;
    }

    /// <summary>Reads a progression hole.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The hole, or null where it is none or out of range.</returns>
    public static CarProgressionHole? Hole(string text)
    {
        var match = text.Length <= LongestText ? HolePattern().Match(text) : Match.Empty;
        return match.Success
            && Length(match.Groups["size"].Value, SmallestHoleMetres, LargestHoleMetres) is { } size
            && Length(match.Groups["place"].Value, 0, FarthestHoleMetres) is { } position
                ? new CarProgressionHole(position, size)
                : null;
    }

    /// <summary>A row as it is written.</summary>
    /// <param name="row">The row.</param>
    /// <returns>The text.</returns>
    public static string Show(CarHoleRow row) => string.Create(
        CultureInfo.InvariantCulture,
        $"{row.Count} x {FigureText.Show(Measure.Length, row.DiameterMetres)} at {FigureText.Show(Measure.Length, row.DepthMetres)}");

    /// <summary>A progression hole as it is written.</summary>
    /// <param name="hole">The hole.</param>
    /// <returns>The text.</returns>
    public static string Show(CarProgressionHole hole) =>
        $"{FigureText.Show(Measure.Length, hole.DiameterMetres)} at {FigureText.Show(Measure.Length, hole.PositionMetres)}";

    private static double? Length(string text, double low, double high) =>
        FigureText.TryParse(Measure.Length, text, out var si) && si >= low && si <= high ? si : null;

    [GeneratedRegex(@"^\s*(?<count>[0-9]{1,3})\s*[x×X]\s*(?<size>[^x×X]+?)\s+at\s+(?<place>.+?)\s*$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex RowPattern();

    [GeneratedRegex(@"^\s*(?<size>[^x×X]+?)\s+at\s+(?<place>.+?)\s*$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex HolePattern();
}
