namespace Tickover.Workshop.Cars;

/// <summary>Where a figure comes from, and the words that say so.</summary>
/// <param name="Kind">The class of origin.</param>
/// <param name="Note">A sentence a mechanic understands, with the source where there is one.</param>
public sealed record Origin(OriginKind Kind, string Note);
