namespace Tickover.Workshop.Visits;

/// <summary>An arrow on a photograph with a note at its tail.</summary>
/// <param name="FromX">Tail, as a part of the width, 0 to 1.</param>
/// <param name="FromY">Tail, as a part of the height, 0 to 1.</param>
/// <param name="ToX">Point, as a part of the width, 0 to 1.</param>
/// <param name="ToY">Point, as a part of the height, 0 to 1.</param>
/// <param name="Note">A few words; may be empty.</param>
public sealed record PhotographMark(double FromX, double FromY, double ToX, double ToY, string Note);
