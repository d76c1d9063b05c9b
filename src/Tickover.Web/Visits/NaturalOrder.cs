using System.Globalization;

namespace Tickover.Web.Visits;

/// <summary>Orders names of places: numbers by size, words by letter.</summary>
internal sealed class NaturalOrder : IComparer<string>
{
    public static readonly NaturalOrder Instance = new();

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        var (a, b) = (Number(x), Number(y));
        return a is not null && b is not null ? a.Value.CompareTo(b.Value) : string.CompareOrdinal(x, y);
    }

    private static double? Number(string? text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;
}
