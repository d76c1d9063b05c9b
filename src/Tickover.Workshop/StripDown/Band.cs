namespace Tickover.Workshop.StripDown;

/// <summary>A figure with the band it lies in at 90 %.</summary>
/// <param name="Value">The figure.</param>
/// <param name="PlusMinus">Half the width of the band; not negative.</param>
public readonly record struct Band(double Value, double PlusMinus);
