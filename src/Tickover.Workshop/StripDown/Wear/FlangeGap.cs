namespace Tickover.Workshop.StripDown.Wear;

/// <summary>Light under a straight edge on a flange.</summary>
/// <param name="GapMillimetres">Widest gap by feeler, mm.</param>
/// <param name="SpanMillimetres">Length over which it is seen, mm.</param>
/// <param name="LandMillimetres">Width of the land from outside to the bore, mm.</param>
/// <param name="Barrel">Barrel it lies beside; empty where it may feed any.</param>
public sealed record FlangeGap(double GapMillimetres, double SpanMillimetres, double LandMillimetres, string Barrel);
