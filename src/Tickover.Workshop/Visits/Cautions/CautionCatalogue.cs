using Tickover.Workshop.Visits.Authorities;

namespace Tickover.Workshop.Visits.Cautions;

/// <summary>All cautions, in the order of the work.</summary>
public static class CautionCatalogue
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Caution> All { get; } = [.. BayCautions.All, .. FuelCautions.All, .. BenchCautions.All, .. RunningCautions.All, .. RoadCautions.All];

    /// <summary>A caution by its key; never throws.</summary>
    /// <param name="key">Key, such as "draining".</param>
    /// <returns>The caution, or null.</returns>
    public static Caution? Find(string? key) => All.FirstOrDefault(c => string.Equals(c.Key, key, StringComparison.Ordinal));

    /// <summary>Cautions met in a stage.</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>The cautions in the order of the work.</returns>
    public static IReadOnlyList<Caution> Of(Stage stage) => [.. All.Where(c => c.Stage == stage)];

    /// <summary>Whom to defer to, for a caution in a workshop.</summary>
    /// <param name="caution">The caution.</param>
    /// <param name="house">The workshop.</param>
    /// <returns>One authority for each of its topics.</returns>
    public static IReadOnlyList<Authority> DeferTo(Caution caution, House house)
    {
        ArgumentNullException.ThrowIfNull(caution);
        return [.. caution.Topics.Select(t => AuthorityCatalogue.For(house, t))];
    }
}
