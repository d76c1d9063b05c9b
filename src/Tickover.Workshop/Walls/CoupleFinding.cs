using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls;

/// <summary>What a metal does to the wall it touches.</summary>
/// <param name="Contact">The metal and where.</param>
/// <param name="Couple">The two metals.</param>
/// <param name="AreaEffect">How many times faster the eaten one goes; null where areas are not known.</param>
/// <param name="MillimetresPerYear">Even loss of the eaten wall under thin and under thick water, mm a year, by oxygen alone; null where the contact is eaten or areas are not known.</param>
/// <param name="Words">What to do.</param>
public sealed record CoupleFinding(WallContact Contact, GalvanicCouple Couple, double? AreaEffect, (double Low, double High)? MillimetresPerYear, string Words);
