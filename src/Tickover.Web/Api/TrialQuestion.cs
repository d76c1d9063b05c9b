using Tickover.Web.Mixture;

namespace Tickover.Web.Api;

/// <summary>A trial asked for by a program.</summary>
public sealed record TrialQuestion
{
    // As many as a page takes; a car has no more parts worth trying at once.
    private const int MostChanges = 12;

    /// <summary>The changes.</summary>
    public IReadOnlyList<TrialChange> Changes { get; init; } = [];

    /// <summary>Whether the barrel asked about is changed alone.</summary>
    public bool OneBarrel { get; init; }

    /// <summary>Puts the changes onto a state.</summary>
    /// <param name="query">The state.</param>
    /// <returns>The state with this trial and no other.</returns>
    public BenchQuery Onto(BenchQuery query)
    {
        ArgumentNullException.ThrowIfNull(query);
        return query with { Part = null, Value = null, Also = [.. (Changes ?? []).Where(c => c is { Part: not null, Value: not null }).Take(MostChanges)], OneBarrel = OneBarrel };
    }
}
