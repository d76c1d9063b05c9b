namespace Tickover.Workshop.StripDown.Wear;

/// <summary>A gap under a straight edge as it is written.</summary>
internal sealed record WrittenFlangeGap(double? Gap, double? Span, double? Land, string? Barrel);
