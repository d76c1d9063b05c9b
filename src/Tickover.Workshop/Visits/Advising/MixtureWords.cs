namespace Tickover.Workshop.Visits.Advising;

/// <summary>A trial of mixture in words.</summary>
/// <param name="Sentence">What to try, verb first: "Try idle jet 55 in all six barrels".</param>
/// <param name="Why">Where it is out, in one sentence.</param>
/// <param name="Evidence">Figures behind it.</param>
public sealed record MixtureWords(string Sentence, string Why, IReadOnlyList<string> Evidence)
{
    /// <summary>Whether it comes of road logs and the choice of jets, and is worked at there.</summary>
    public bool FromLogs { get; init; }
}
