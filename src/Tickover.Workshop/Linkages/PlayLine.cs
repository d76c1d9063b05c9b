namespace Tickover.Workshop.Linkages;

/// <summary>What the play of one rod's ball ends does to the plates.</summary>
/// <param name="Rod">Name of the rod.</param>
/// <param name="PlayMillimetres">Free movement at each end, mm.</param>
/// <param name="Degrees">How far it lets each carburettor's plates wander at idle, degrees either way.</param>
public sealed record PlayLine(string Rod, double PlayMillimetres, IReadOnlyList<double> Degrees);
