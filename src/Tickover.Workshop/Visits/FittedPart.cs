namespace Tickover.Workshop.Visits;

/// <summary>One part or setting that went into all barrels.</summary>
/// <param name="Part">The part, by its name in a car's document, such as <c>mainJet</c>.</param>
/// <param name="Label">The trade's name.</param>
/// <param name="From">What came out, as documents write it.</param>
/// <param name="To">What went in.</param>
/// <param name="Pieces">How many; 0 for what is set and not fitted.</param>
public sealed record FittedPart(string Part, string Label, string From, string To, int Pieces);
