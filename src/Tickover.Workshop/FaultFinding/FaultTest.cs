namespace Tickover.Workshop.FaultFinding;

/// <summary>Something to look at, with its possible answers and what each tells.</summary>
public sealed record FaultTest
{
    /// <summary>Its key, such as <c>swap-idle-jet</c>.</summary>
    public required string Key { get; init; }

    /// <summary>What to do and to look for, ending in a question.</summary>
    public required string Question { get; init; }

    /// <summary>Time it takes once it is set up, minutes.</summary>
    public required double Minutes { get; init; }

    /// <summary>How much comes off: 0 nothing, 1 a part, 2 an assembly.</summary>
    public int PartsOff { get; init; }

    /// <summary>Key of the caution before it; empty where none is kept.</summary>
    public string Caution { get; init; } = string.Empty;

    /// <summary>Whether it looks for one sign that any of its causes shows whatever the others do.</summary>
    public bool IsSign { get; init; }

    /// <summary>Keys of tests that look at the same thing again: not asked once this one was answered.</summary>
    public IReadOnlyList<string> Covers { get; init; } = [];

    /// <summary>The answers, at least two.</summary>
    public required IReadOnlyList<FaultAnswer> Answers { get; init; }

    /// <summary>Where the row comes from.</summary>
    public required string Origin { get; init; }

    /// <summary>How far it may be trusted: low, middling or high.</summary>
    public required string Confidence { get; init; }

    /// <summary>Keys of the causes it speaks of.</summary>
    public IEnumerable<string> Causes => Answers.SelectMany(a => a.Likelihood.Keys).Distinct(StringComparer.Ordinal);

    /// <summary>The place of an answer among the answers.</summary>
    /// <param name="key">Its key.</param>
    /// <returns>From 0; null where there is no such answer.</returns>
    public int? Number(string key)
    {
        for (var i = 0; i < Answers.Count; i++)
        {
            if (string.Equals(Answers[i].Key, key, StringComparison.Ordinal))
            {
                return i;
            }
        }

        return null;
    }
}
