namespace Tickover.Instruments.Logs.Columns;

/// <summary>A heading taken apart: its words, and the unit that stands with it.</summary>
/// <param name="Words">Words in small letters.</param>
/// <param name="Unit">Unit in brackets, behind a stroke or at the end; else of the units row; else empty.</param>
internal sealed record HeadingText(IReadOnlyList<string> Words, string Unit)
{
    /// <summary>Takes a heading apart.</summary>
    /// <param name="heading">The heading.</param>
    /// <param name="unitsRow">The cell of the units row under it.</param>
    /// <returns>The parts.</returns>
    public static HeadingText Of(string heading, string unitsRow)
    {
        var (name, unit) = Bracketed(heading);
        var words = WordsOf(name);
        unit = unit.Length > 0 ? unit : unitsRow.Trim('(', ')', '[', ']', ' ');
        return new(words, unit.Length > 0 || words.Count < 2 ? unit : Trailing(name));
    }

    /// <summary>Whether one of the words is there.</summary>
    /// <param name="words">The words.</param>
    /// <returns>Whether one is.</returns>
    public bool HasAny(params ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (Words.Contains(word, StringComparer.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    private static (string Name, string Unit) Bracketed(string heading)
    {
        var open = heading.IndexOfAny(['(', '[', '{']);
        var close = heading.LastIndexOfAny([')', ']', '}']);
        return open > 0 && close > open + 1
            ? (heading[..open] + " " + heading[(close + 1)..], heading[(open + 1)..close].Trim())
            : (heading, string.Empty);
    }

    private static readonly char[] BetweenWords = ['_', ' ', '-', '.'];

    // "map_kpa", "oil temp degC", "time ms": the last word, or the last two, if they are a unit and no name.
    private static string Trailing(string name)
    {
        // Of the heading as it is: "mmHg" is one word here, though it parts where small letters turn to capitals.
        var parts = name.Split(BetweenWords, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (parts.Length < 2)
        {
            return string.Empty;
        }

        var last = parts[^1].ToLowerInvariant();
        if (last is "abs" or "gauge" or "vac" or "absolute" or "vacuum" && parts.Length > 2 && LogUnits.PressureNameIn(parts[^2]) is not null)
        {
            return $"{parts[^2]} {last}";
        }

        return last.Length > 0 && !char.IsAsciiDigit(last[0]) && last is not ("lambda" or "afr" or "rpm" or "l" or "r" or "a" or "d" or "min") && LogUnits.IsUnit(last) ? last : string.Empty;
    }

    // Words part at anything but letters and figures, where small letters turn to capitals, and between letters and figures.
    private static List<string> WordsOf(string name)
    {
        var words = new List<string>();
        var start = 0;
        for (var i = 1; i <= name.Length; i++)
        {
            if (i == name.Length || Parts(name, i))
            {
                var word = name[start..i].Trim();
                start = i;
                if (word.Length > 0 && word.Any(char.IsLetterOrDigit))
                {
                    words.Add(word.ToLowerInvariant());
                }
                else if (word is "λ" or "°")
                {
                    words.Add(word);
                }
            }
        }

        return words;
    }

    private static bool Parts(string name, int at)
    {
        var (before, here) = (name[at - 1], name[at]);
        if (!char.IsLetterOrDigit(before) || !char.IsLetterOrDigit(here))
        {
            return true;
        }

        return char.IsDigit(before) != char.IsDigit(here)
            || (char.IsLower(before) && char.IsUpper(here))
            || (char.IsUpper(before) && char.IsUpper(here) && at + 1 < name.Length && char.IsLower(name[at + 1]));
    }
}
