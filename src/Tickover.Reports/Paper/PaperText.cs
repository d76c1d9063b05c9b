using System.Globalization;
using System.Text;

namespace Tickover.Reports.Paper;

/// <summary>Makes any text fit to be set.</summary>
internal static class PaperText
{
    // Latin Extended-B ends here; beyond it a small letter is more often a symbol than the beginning of a word
    private const char LastLatin = '\u024F';

    /// <summary>Composed letters, no control characters but line ends, nothing that turns the direction of what follows.</summary>
    internal static string Clean(string text)
    {
        if (text.All(c => c is >= ' ' and <= '~'))
        {
            return text;
        }

        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.ReplaceLineEndings("\n").EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '\n' => clean.Append('\n'),
                '\t' => clean.Append(' '),
                _ when Rune.IsControl(rune) => clean,
                _ when TurnsDirection(rune.Value) => clean,
                _ => clean.Append(rune),
            };
        }

        // Runes are well formed, so this cannot throw
        return clean.ToString().Normalize(NormalizationForm.FormC);
    }

    /// <summary>A text as a sentence: a capital first and an end.</summary>
    internal static string Sentence(string text)
    {
        var trimmed = text.Trim();
        return trimmed.Length == 0 ? "" : Capital(trimmed) + (trimmed[^1] is '.' or '?' or '!' or '…' or ':' or '”' ? "" : ".");
    }

    /// <summary>A text with a capital first; a symbol such as λ stays as it is.</summary>
    internal static string Capital(string text) => text.Length == 0 || text[0] > LastLatin ? text : string.Create(CultureInfo.InvariantCulture, $"{char.ToUpperInvariant(text[0])}{text[1..]}");

    // Marks, embeddings, overrides and isolates of Unicode Standard Annex 9, and the byte order mark
    private static bool TurnsDirection(int value) => value is 0x200E or 0x200F or 0x061C or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) or 0xFEFF;
}
