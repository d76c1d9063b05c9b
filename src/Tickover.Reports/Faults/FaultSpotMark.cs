using Tickover.Workshop.FaultFinding;

namespace Tickover.Reports.Faults;

/// <summary>A number at a place of the drawing.</summary>
/// <param name="Number">The number, from 1; 1 is the first place to look.</param>
/// <param name="Spot">The place.</param>
/// <param name="Words">What it stands for, for whoever cannot see the drawing.</param>
public sealed record FaultSpotMark(int Number, FaultSpot Spot, string Words);
