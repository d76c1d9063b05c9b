using System.Text.Json;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>A sheet of wear as it is written.</summary>
internal sealed record WrittenWear(
    string? Format, string? Name, double? IdleRpm, double? IdleAir, double? Micrometer, WearLimits? Limits, JsonElement? Car, WrittenWearEngine? Engine, JsonElement? Shelf,
    IReadOnlyList<WrittenWearBody?>? Carburettors, IReadOnlyList<WrittenWearBarrel?>? Barrels);
