namespace Tickover.Workshop.Linkages;

/// <summary>Settings that make all carburettors open alike, as they can be set by hand.</summary>
/// <param name="Moves">What to set otherwise, from the pedal outwards; empty where nothing helps.</param>
/// <param name="Linkage">The linkage so set.</param>
/// <param name="Course">What it does then.</param>
/// <param name="Worst">The largest mismatch then.</param>
public sealed record Equalised(IReadOnlyList<LinkageMove> Moves, Linkage Linkage, IReadOnlyList<LinkageMoment> Course, LinkageWorst Worst);
