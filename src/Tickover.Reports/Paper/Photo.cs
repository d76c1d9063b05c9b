using Tickover.Workshop.Visits;

namespace Tickover.Reports.Paper;

/// <summary>A photograph.</summary>
/// <param name="Jpeg">The picture as a JPEG file; null where it is not to be had.</param>
/// <param name="Caption">What it shows.</param>
/// <param name="Marks">Arrows on it.</param>
internal sealed record Photo(byte[]? Jpeg, Prose Caption, IReadOnlyList<PhotographMark> Marks);
