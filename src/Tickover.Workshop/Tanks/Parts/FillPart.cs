namespace Tickover.Workshop.Tanks.Parts;

/// <summary>A fill in measured steps.</summary>
/// <param name="Tank">Number of the tank whose stick was read.</param>
/// <param name="IsJoined">Whether the fuel had levelled through the cross-pipe before each dip; false where this tank alone was filled.</param>
/// <param name="Steps">Litres poured in, all of them so far, and the dip in mm.</param>
public sealed record FillPart(int Tank, bool IsJoined, IReadOnlyList<(double Litres, double DipMillimetres)> Steps);
