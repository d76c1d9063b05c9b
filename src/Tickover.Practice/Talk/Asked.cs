namespace Tickover.Practice.Talk;

/// <summary>What a line asks for: something to do with the engine, advice, or why it is no act.</summary>
/// <param name="Do">What to do; null where the line is no act.</param>
/// <param name="Complaint">What is wrong with the line and what to write; null where it is an act.</param>
internal sealed record Asked(Func<PracticeEngine, PracticeAnswer>? Do, string? Complaint)
{
    /// <summary>Advice on what to do next.</summary>
    public static Asked Advice { get; } = new(null, null) { IsAdvice = true };

    /// <summary>Whether advice is asked for.</summary>
    public bool IsAdvice { get; private init; }

    public static Asked For(Func<PracticeEngine, PracticeAnswer> act) => new(act, null);

    public static Asked No(string complaint) => new(null, complaint);
}
