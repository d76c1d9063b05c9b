namespace Tickover.Workshop.StripDown.Wear;

/// <summary>A needle valve's test as it is written.</summary>
internal sealed record WrittenNeedle(double? Drops, double? Fall, double? Tube, double? Seconds, double? Head, double? Hold);
