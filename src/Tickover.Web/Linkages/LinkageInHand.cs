using Tickover.Workshop.Linkages;

namespace Tickover.Web.Linkages;

/// <summary>A linkage that is being looked at.</summary>
/// <param name="Id">Its name in the address: a sample's name, or the beginning of the hash of the document.</param>
/// <param name="Analysis">What it does.</param>
public sealed record LinkageInHand(string Id, LinkageAnalysis Analysis);
