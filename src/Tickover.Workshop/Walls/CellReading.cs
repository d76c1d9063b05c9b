namespace Tickover.Workshop.Walls;

/// <summary>What was read of a cell.</summary>
/// <remarks><c>default</c> is a cell that was not read.</remarks>
/// <param name="Kind">What.</param>
/// <param name="DepthMillimetres">Depth of the deepest pit, or what it is shallower or deeper than, mm; for a hole the wall's thickness.</param>
public readonly record struct CellReading(CellReadingKind Kind, double DepthMillimetres);
