namespace Tickover.Workshop.Linkages;

/// <summary>One piece of advice.</summary>
/// <param name="Heading">What it is about, in a few words.</param>
/// <param name="Words">What is so, why, and what to do.</param>
/// <param name="IsDanger">Whether it can hurt somebody.</param>
public sealed record LinkageAdvice(string Heading, string Words, bool IsDanger = false)
{
    /// <summary>Heading of what to expect once the moves are made.</summary>
    public const string Expect = "Expect afterwards";
}
