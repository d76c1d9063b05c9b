namespace Tickover.Reports.Mixture;

/// <summary>A place on the map.</summary>
/// <param name="SpeedRpm">Engine speed, rpm.</param>
/// <param name="ThrottleDegrees">Plate opening from seated, degrees.</param>
public readonly record struct MapSpot(double SpeedRpm, double ThrottleDegrees);
