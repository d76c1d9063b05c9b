namespace Tickover.Workshop.JetChoice;

/// <summary>An emulsion tube in stock: its code says nothing, its holes do.</summary>
/// <param name="Code">What is stamped on it.</param>
/// <param name="Holes">Its rows of holes as a car's document writes them.</param>
/// <param name="Count">How many there are.</param>
public sealed record EmulsionTubeChoice(string Code, IReadOnlyList<string> Holes, int Count);
