using Tickover.Workshop.Linkages;

namespace Tickover.Web.Linkages;

/// <summary>A linkage that can be looked at; worked out when it first is.</summary>
/// <param name="linkage">The linkage.</param>
public sealed class LinkageInHand(Linkage linkage)
{
    private readonly Lazy<LinkageAnalysis> _analysis = new(() => LinkageAnalyst.Of(linkage));

    /// <summary>The linkage as described.</summary>
    public Linkage Linkage => linkage;

    /// <summary>What it does.</summary>
    public LinkageAnalysis Analysis => _analysis.Value;
}
