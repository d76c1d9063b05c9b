namespace Tickover.Workshop.StripDown.Levels;

/// <summary>The floats as they are written.</summary>
internal sealed record WrittenFloat(double? Mass, double? Area, double? Height, double? Diameter, double? Length, double? Sunk);
