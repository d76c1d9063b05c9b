namespace Tickover.Workshop.Gauges.Reading;

/// <summary>Figures of a manoeuvre in SI units.</summary>
internal sealed record RoadFigures(double Speed, bool SpeedGiven, double? Radius, double Turns, double Seconds, double CarWidth, bool ToLeft);
