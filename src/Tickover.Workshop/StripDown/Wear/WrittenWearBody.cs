namespace Tickover.Workshop.StripDown.Wear;

/// <summary>A carburettor's body as it is written.</summary>
internal sealed record WrittenWearBody(string? Where, IReadOnlyList<WrittenFlangeGap?>? Flange, WrittenNeedle? Needle);
