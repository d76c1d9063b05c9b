using Tickover.Workshop.Visits;

namespace Tickover.Workshop.StripDown.Cards;

/// <summary>A place that stands out of its set.</summary>
/// <param name="Place">The place.</param>
/// <param name="Text">What is noted of it, with its unit.</param>
/// <param name="Reason">Why it is so, from the note beside the reading; empty where none stands there.</param>
public sealed record SetOdd(Place Place, string Text, string Reason);
