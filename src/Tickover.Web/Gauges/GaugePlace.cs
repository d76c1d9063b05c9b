using Tickover.Workshop.Gauges;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Gauges;

/// <summary>What of a gauge is looked at.</summary>
/// <param name="Id">Its name in the address.</param>
/// <param name="Analysis">What it does on the road.</param>
/// <param name="Film">The drive with the remedy.</param>
/// <param name="Road">The manoeuvre; null: the document's own road.</param>
/// <param name="Remedy">The remedy.</param>
/// <param name="Visit">The visit it was come to from; null where it was none.</param>
public sealed record GaugePlace(string Id, GaugeAnalysis Analysis, GaugeFilm Film, Manoeuvre? Road, GaugeRemedy Remedy, Id<Visit>? Visit);
