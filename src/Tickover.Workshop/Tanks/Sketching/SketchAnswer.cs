using Tickover.Physics.Tanks;

namespace Tickover.Workshop.Tanks.Sketching;

/// <summary>What comes of a sketch.</summary>
/// <param name="Outline">The outline with its corners rounded, or what is wrong with it and where.</param>
/// <param name="Missing">What is still to be drawn or typed, a sentence each.</param>
/// <param name="Problems">What is wrong, a sentence each.</param>
/// <param name="Tank">The tank; null while something is missing or wrong.</param>
public sealed record SketchAnswer(OutlineVerdict Outline, IReadOnlyList<string> Missing, IReadOnlyList<string> Problems, SketchedTank? Tank);
