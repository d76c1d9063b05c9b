namespace Tickover.Physics.Tanks;

/// <summary>Whether corners are an outline.</summary>
/// <param name="Fault">The first thing that is wrong; null where nothing is.</param>
/// <param name="Round">The outline with its corners rounded, short chords for arcs, in the order given; empty where something is wrong.</param>
public sealed record OutlineVerdict(OutlineFault? Fault, IReadOnlyList<OutlinePoint> Round);
