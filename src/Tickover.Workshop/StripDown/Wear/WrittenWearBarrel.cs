namespace Tickover.Workshop.StripDown.Wear;

/// <summary>A barrel as it is written.</summary>
internal sealed record WrittenWearBarrel(
    string? Where, string? Carburettor, double? Bore, double? BoreAcross, WrittenPlate? Plate, IReadOnlyList<WrittenBush?>? Spindle, WrittenShot? Pump, WrittenTube? Tube, bool? StopTouches);
