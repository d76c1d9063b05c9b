using System.Text.Json;

namespace Tickover.Workshop.StripDown.Levels;

/// <summary>A sheet of float levels as it is written.</summary>
internal sealed record WrittenLevels(
    string? Format, string? Name, string? Fuel, double? Temperature, double? Pressure, double? DeadHead, double? IdleFlow,
    WrittenFloat? Float, double? FloatArm, double? NeedleArm, double? Seat, double? Gasket, double? Nozzle, double? Spill,
    double? Wanted, double? Limit, double? MassLimit, double? Rule, double? Scales, double? Signal, JsonElement? Car, IReadOnlyList<WrittenLevel?>? Carburettors);
