namespace Tickover.Workshop.Walls;

/// <summary>The deepest pit nobody read, with the band that holds it nine times in ten.</summary>
/// <param name="Low">One in twenty is shallower, mm.</param>
/// <param name="Middle">Half are shallower, mm.</param>
/// <param name="High">One in twenty is deeper, mm.</param>
public readonly record struct UnseenDepth(double Low, double Middle, double High);
