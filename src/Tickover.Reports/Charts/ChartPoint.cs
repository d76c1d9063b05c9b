namespace Tickover.Reports.Charts;

/// <summary>A place on a drawing, in drawing units (CSS px at the size shown), y downwards.</summary>
internal readonly record struct ChartPoint(double X, double Y);
