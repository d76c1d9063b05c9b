namespace Tickover.Workshop.Tanks;

/// <summary>One piece of advice.</summary>
/// <param name="Heading">What it is about, in a few words.</param>
/// <param name="Words">What is so, why, and what to do.</param>
/// <param name="IsDanger">Whether it can hurt somebody.</param>
public sealed record TankAdvice(string Heading, string Words, bool IsDanger = false);
