using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Visits.Advising;

/// <summary>Findings that can hurt someone, before anything else.</summary>
public sealed class UnsafeAdviser : IAdviser
{
    /// <inheritdoc/>
    public string Name => "unsafe findings";

    /// <inheritdoc/>
    public IEnumerable<Advice> Of(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var leaks = FuelLeaks.Standing(context.Record).Select(f => f.Id).ToHashSet();
        return context.Record.Findings
            .Where(f => !f.Removed && f.Severity == Severity.Unsafe && f.State == FindingState.Open)
            .OrderByDescending(f => leaks.Contains(f.Id)).ThenBy(f => f.Kept)
            .Select(f => Advise(f, leaks.Contains(f.Id), context));
    }

    private static Advice Advise(Finding finding, bool leaks, AdviceContext context) => new()
    {
        Sentence = leaks && context.Stage == Stage.Arrival ? "Push it outdoors before anything else" : $"Put right before anything else: {finding.What}",
        Why = $"{finding.What.TrimEnd('.')}{(finding.Where.Length > 0 ? $", {finding.Where}" : "")}: it can hurt someone now.",
        Evidence = [.. new[] { finding.Detail, finding.Decision }.Where(t => t.Length > 0)],
        Rank = AdviceRank.Unsafe,
        Place = new AdvicePlace(AdvicePlaceKind.Finding, finding.Stage, null, finding.Id),
    };
}
