namespace Tickover.Workshop.Balance;

/// <summary>A rod was offered to its ball, or a stop looked at.</summary>
/// <param name="What">"stop:2" for a stop, "rod:2" or "bankrod" for a rod offered.</param>
/// <param name="Gap">Of a stop: gap in mm, 0 where it touches. Of a rod: how much too long (+) or short (−), mm.</param>
public sealed record LookedAt(string What, double Gap) : BalanceStep;
