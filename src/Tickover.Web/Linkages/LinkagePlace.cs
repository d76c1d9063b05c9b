using Tickover.Reports.Linkages;
using Tickover.Workshop.Linkages;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Linkages;

/// <summary>What of a linkage is looked at.</summary>
/// <param name="Id">Its name in the address.</param>
/// <param name="Analysis">What it does.</param>
/// <param name="Down">How far the pedal is down, per cent.</param>
/// <param name="Setting">As found or as advised.</param>
/// <param name="Visit">The visit it was come to from; null where it was none.</param>
public sealed record LinkagePlace(string Id, LinkageAnalysis Analysis, int Down, LinkageSetting Setting, Id<Visit>? Visit = null);
