using Tickover.Workshop.JetChoice;

namespace Tickover.Web.RoadLogs;

/// <summary>A set of jets on offer.</summary>
/// <param name="Key">Its name in forms.</param>
/// <param name="Name">Its name on the page.</param>
/// <param name="Proposal">The set.</param>
public sealed record JetOffer(string Key, string Name, JetProposal Proposal);
