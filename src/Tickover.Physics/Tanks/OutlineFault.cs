namespace Tickover.Physics.Tanks;

/// <summary>What is wrong with an outline, and where.</summary>
/// <param name="Kind">What.</param>
/// <param name="Sides">The sides it is about, each by the number of the corner it begins at, from 0; empty where it is about the whole.</param>
/// <param name="Words">The same in a sentence, with what to do.</param>
public sealed record OutlineFault(OutlineFaultKind Kind, IReadOnlyList<int> Sides, string Words);
