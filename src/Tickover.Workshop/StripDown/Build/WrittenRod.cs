namespace Tickover.Workshop.StripDown.Build;

/// <summary>A link rod as it is written.</summary>
internal sealed record WrittenRod(string? Where, double? Length);
