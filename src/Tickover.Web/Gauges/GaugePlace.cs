using Tickover.Workshop.Gauges;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Gauges;

/// <summary>What of a gauge's story is looked at.</summary>
/// <param name="Id">Its name in the address.</param>
/// <param name="Story">The story.</param>
/// <param name="Road">The manoeuvre; null: its own road.</param>
/// <param name="Remedy">The remedy it is drawn with.</param>
/// <param name="Analysis">What comes of it.</param>
/// <param name="Visit">The visit it was come to from; null where it was none.</param>
public sealed record GaugePlace(string Id, GaugeStory Story, string? Road, string Remedy, GaugeAnalysis Analysis, Id<Visit>? Visit);
