using System.Text.Json;

namespace Tickover.Workshop.StripDown.Build;

/// <summary>A sheet of bench settings as it is written.</summary>
internal sealed record WrittenBuild(
    string? Format, string? Name, double? IdleRpm, double? IdleAir, double? Lambda, double? StopArm, double? StopPitch, double? RodArm, double? RodLimit, IReadOnlyList<WrittenRod?>? Rods, JsonElement? Car);
