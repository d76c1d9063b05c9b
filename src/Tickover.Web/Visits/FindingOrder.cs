using Tickover.Workshop.Visits;

namespace Tickover.Web.Visits;

/// <summary>The order in which findings are read.</summary>
internal static class FindingOrder
{
    /// <summary>Unsafe before soon before watch, open before settled, as kept.</summary>
    public static IEnumerable<Finding> WorstFirst(IEnumerable<Finding> findings) =>
        findings.OrderBy(f => f.Severity).ThenBy(f => f.State != FindingState.Open).ThenBy(f => f.Kept);
}
