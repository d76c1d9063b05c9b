namespace Tickover.Workshop.StripDown.Wear;

/// <summary>A throttle plate as it is written.</summary>
internal sealed record WrittenPlate(double? Angle, double? LongAxis, double? Light, double? Gap);
