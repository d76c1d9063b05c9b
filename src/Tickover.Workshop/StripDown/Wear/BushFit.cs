namespace Tickover.Workshop.StripDown.Wear;

/// <summary>A spindle in one of its bearings.</summary>
/// <param name="End">Which end, such as "outer".</param>
/// <param name="SpindleMillimetres">Diameter of the spindle there, mm.</param>
/// <param name="BushMillimetres">Diameter of the bush, mm.</param>
/// <param name="LengthMillimetres">Length of the bearing, mm.</param>
/// <param name="IsSealed">Whether a seal keeps air out.</param>
public sealed record BushFit(string End, double SpindleMillimetres, double BushMillimetres, double LengthMillimetres, bool IsSealed);
