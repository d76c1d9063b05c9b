namespace Tickover.Workshop.StripDown.Levels;

/// <summary>One carburettor's float as it is written.</summary>
internal sealed record WrittenLevel(string? Where, double? Dry, string? From, string? To, double? Mass, double? Drop, double? Wet);
