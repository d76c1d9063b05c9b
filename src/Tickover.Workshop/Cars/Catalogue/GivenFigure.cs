namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>A figure that the document gives.</summary>
/// <param name="Path">Where it stands.</param>
/// <param name="AsTyped">The text there.</param>
/// <param name="Si">The value, SI; NaN where a fault is reported for it already.</param>
internal sealed record GivenFigure(string Path, string AsTyped, double Si);
