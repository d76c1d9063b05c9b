using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.FaultFinding;

/// <summary>Finds the symptom somebody means by a key or by words.</summary>
public static class SymptomSearch
{
    private const int Offered = 4;
    private const int ShortestWord = 3;

    /// <summary>Finds symptoms.</summary>
    /// <param name="knowledge">Where to look.</param>
    /// <param name="text">A key, or words.</param>
    /// <returns>The one meant, where the text is its key or its words; else null and the closest.</returns>
    public static (FaultSymptom? Meant, IReadOnlyList<FaultSymptom> Closest) Find(FaultKnowledge knowledge, string text)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        ArgumentNullException.ThrowIfNull(text);
        var trimmed = text.Trim();
        var meant = knowledge.Symptoms.FirstOrDefault(s => Names(s).Contains(trimmed, StringComparer.OrdinalIgnoreCase));
        if (meant is not null)
        {
            return (meant, []);
        }

        var words = Words(trimmed);
        var near = Spelling.Nearest(trimmed, knowledge.Symptoms.SelectMany(Names));
        var closest = knowledge.Symptoms
            .Select(s => (Symptom: s, Score: Score(s, words) + (near is not null && Names(s).Contains(near, StringComparer.Ordinal) ? 1 : 0)))
            .Where(s => s.Score > 0)
            .OrderByDescending(s => s.Score)
            .Take(Offered)
            .Select(s => s.Symptom);
        return (null, [.. closest]);
    }

    /// <summary>What to say to a symptom that is not known.</summary>
    /// <param name="closest">The closest ones.</param>
    /// <returns>A sentence.</returns>
    public static string Offer(IReadOnlyList<FaultSymptom> closest)
    {
        ArgumentNullException.ThrowIfNull(closest);
        return closest.Count == 0
            ? "Nothing comes near it. 'tickover fault --list symptoms' prints them all."
            : $"Closest: {string.Join("; ", closest.Select(s => $"{s.Key} ({s.Words})"))}.";
    }

    private static IEnumerable<string> Names(FaultSymptom symptom) => [symptom.Key, symptom.Words, .. symptom.Also];

    private static double Score(FaultSymptom symptom, HashSet<string> words)
    {
        var own = Words(string.Join(' ', Names(symptom)));
        return words.Count == 0 ? 0 : (double)words.Count(w => own.Any(o => Alike(o, w))) / words.Count;
    }

    private static bool Alike(string a, string b) => a.StartsWith(b, StringComparison.Ordinal) || b.StartsWith(a, StringComparison.Ordinal) || Spelling.Nearest(a, [b]) is not null;

    private static HashSet<string> Words(string text) =>
        [.. text.ToUpperInvariant().Split([' ', ',', '.', ';', '-', '?', '!', ':'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length >= ShortestWord)];
}
