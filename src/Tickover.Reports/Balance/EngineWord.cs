using Tickover.Reports.Charts;

namespace Tickover.Reports.Balance;

/// <summary>A word that stands on the drawing of an engine whatever was read.</summary>
/// <param name="Text">The word.</param>
/// <param name="At">Its middle, on the baseline.</param>
/// <param name="Size">Size, drawing units.</param>
/// <param name="Bold">Whether it is bold.</param>
internal sealed record EngineWord(string Text, ChartPoint At, double Size, bool Bold);
