namespace Tickover.Workshop.StripDown.Wear;

/// <summary>An emulsion tube as it is written.</summary>
internal sealed record WrittenTube(string? Stamp, IReadOnlyList<string?>? Holes);
