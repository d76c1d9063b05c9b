using Tickover.Workshop.Visits;

namespace Tickover.Workshop.JetFittings;

/// <summary>A set that was fitted, and the runs that proved it or did not.</summary>
/// <param name="Fitting">The set with what was expected.</param>
/// <param name="Proof">What the runs with it showed; null where none was made.</param>
public sealed record FittingStory(JetFitting Fitting, RunShowing? Proof);
