namespace Tickover.Workshop.StripDown.Build;

/// <summary>A link rod as measured.</summary>
/// <param name="Where">Which rod.</param>
/// <param name="Millimetres">Length between the middles of its balls, mm.</param>
public sealed record BuildRod(string Where, double Millimetres);
