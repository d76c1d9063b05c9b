using System.Globalization;

namespace Tickover.Workshop.FaultFinding;

/// <summary>Reads what somebody says to a test.</summary>
public static class FaultReply
{
    /// <summary>The word for an answer that cannot be told.</summary>
    public const string Unsure = "unsure";

    private const char Leaning = '?';

    /// <summary>Reads an answer: its key, its number from 1, its words, or <see cref="Unsure"/>; with a question mark behind it, rather so than not.</summary>
    /// <param name="test">The test.</param>
    /// <param name="text">What was said.</param>
    /// <returns>The answer; null where it is none.</returns>
    public static FaultGiven? Read(FaultTest test, string text)
    {
        ArgumentNullException.ThrowIfNull(test);
        ArgumentNullException.ThrowIfNull(text);
        var said = text.Trim();
        if (said is "?" || string.Equals(said, Unsure, StringComparison.OrdinalIgnoreCase))
        {
            return new FaultGiven(test.Key, string.Empty, FaultCertainty.Unsure);
        }

        var certainty = said.EndsWith(Leaning) ? FaultCertainty.Leaning : FaultCertainty.Sure;
        var plain = said.TrimEnd(Leaning).TrimEnd();
        var meant = Meant(test, plain);
        return meant is null ? null : new FaultGiven(test.Key, meant.Key, certainty);
    }

    /// <summary>The words that may be said.</summary>
    /// <param name="test">The test.</param>
    /// <returns>Keys, with <see cref="Unsure"/>.</returns>
    public static string Allowed(FaultTest test)
    {
        ArgumentNullException.ThrowIfNull(test);
        return $"{string.Join(", ", test.Answers.Select(a => a.Key))} or {Unsure}";
    }

    private static FaultAnswer? Meant(FaultTest test, string plain)
    {
        if (int.TryParse(plain, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            return number >= 1 && number <= test.Answers.Count ? test.Answers[number - 1] : null;
        }

        return test.Answers.FirstOrDefault(a => Same(a.Key, plain) || Same(a.Words, plain))
            ?? (test.IsSign && plain.Length == 1 ? test.Answers.FirstOrDefault(a => a.Key.StartsWith(plain, StringComparison.OrdinalIgnoreCase)) : null);
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
