namespace Tickover.Workshop.Cars.Reading;

/// <summary>Finds the word somebody meant.</summary>
internal static class Spelling
{
    private const int LongestName = 40;
    private const int LettersPerSlip = 3;

    /// <summary>The nearest known word by number of changed letters (Levenshtein 1966).</summary>
    /// <param name="name">What was written.</param>
    /// <param name="known">The known words.</param>
    /// <returns>A word at most a third of its letters away, or null.</returns>
    public static string? Nearest(string name, IEnumerable<string> known)
    {
        if (name.Length is 0 or > LongestName)
        {
            return null;
        }

        var (word, distance) = known
            .Select(k => (Word: k, Distance: Distance(name.ToUpperInvariant(), k.ToUpperInvariant())))
            .OrderBy(k => k.Distance)
            .ThenBy(k => k.Word, StringComparer.Ordinal)
            .FirstOrDefault();
        return word is not null && distance <= Math.Max(1, word.Length / LettersPerSlip) ? word : null;
    }

    private static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var above = row[j];
                var replaced = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(replaced, Math.Min(row[j], row[j - 1]) + 1);
                diagonal = above;
            }
        }

        return row[b.Length];
    }
}
