namespace Tickover.Workshop.StripDown.Jets;

/// <summary>One jet as it is written.</summary>
internal sealed record WrittenJet(string? Part, string? Where, string? Stamp, double? Pin, double? Volume, double? Time);
