using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.FaultFinding;

/// <summary>Finds the cause somebody means by its key or its words.</summary>
public static class CauseSearch
{
    /// <summary>Finds it.</summary>
    /// <param name="knowledge">Where to look.</param>
    /// <param name="text">A key, or the words of a cause.</param>
    /// <returns>The cause; null where none is called so.</returns>
    public static FaultCause? Find(FaultKnowledge knowledge, string text)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        ArgumentNullException.ThrowIfNull(text);
        var trimmed = text.Trim();
        return knowledge.Causes.GetValueOrDefault(trimmed)
            ?? knowledge.Causes.Values.FirstOrDefault(c => string.Equals(c.Key, trimmed, StringComparison.OrdinalIgnoreCase) || string.Equals(c.Words, trimmed, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>What to say to a cause that is not known.</summary>
    /// <param name="knowledge">Where to look.</param>
    /// <param name="text">What was written.</param>
    /// <returns>A sentence.</returns>
    public static string Offer(FaultKnowledge knowledge, string text)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        return Spelling.Nearest(text, knowledge.Causes.Keys) is { } near ? $"Did you mean \"{near}\"?" : "'tickover fault --list causes' prints them all.";
    }
}
