namespace Tickover.Workshop.StripDown.Wear;

/// <summary>One bearing of a spindle as it is written.</summary>
internal sealed record WrittenBush(string? End, double? Spindle, double? Bush, double? Length, bool? Sealed);
