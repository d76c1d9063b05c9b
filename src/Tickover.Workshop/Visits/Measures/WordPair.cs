namespace Tickover.Workshop.Visits.Measures;

/// <summary>A word of the trade in Britain and in America.</summary>
/// <param name="British">The British word, small letters, singular.</param>
/// <param name="American">The American word.</param>
/// <param name="Meaning">What it is; empty where the two only spell it differently.</param>
public sealed record WordPair(string British, string American, string Meaning)
{
    /// <summary>Whether the word has a plural that is made in the regular way.</summary>
    public bool HasPlural { get; init; } = true;
}
