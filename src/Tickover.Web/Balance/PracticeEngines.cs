using Tickover.Web.Cars;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Web.Balance;

/// <summary>The invented engines there are to practise on: the samples, and plans of engines no car document describes.</summary>
public sealed class PracticeEngines
{
    private const string PlanEnding = ".plan.json";
    private readonly Lazy<IReadOnlyList<(string Id, EnginePlan Plan)>> _all;

    /// <summary>Gathers them once.</summary>
    /// <param name="samples">The sample cars.</param>
    /// <param name="options">Names the folder of the plans.</param>
    public PracticeEngines(Samples samples, WebAppOptions options) => _all = new(() =>
    [
        .. samples.List().Where(c => c.Reading.Car is { } car && car.Barrels.Count > 2).Select(c => (c.Id.ToString(), PlanOfCar.Of(c.Reading.Car!))),
        .. Plans(options.SamplesFolder),
    ]);

    /// <summary>All of them.</summary>
    public IReadOnlyList<(string Id, EnginePlan Plan)> All => _all.Value;

    /// <summary>One of them.</summary>
    /// <param name="id">Such as "osprey-v8".</param>
    /// <returns>The plan; null where there is none of that name.</returns>
    public EnginePlan? Find(string id) => All.FirstOrDefault(e => string.Equals(e.Id, id, StringComparison.Ordinal)).Plan;

    private static IEnumerable<(string, EnginePlan)> Plans(string? folder) => !Directory.Exists(folder) ? [] :
        from path in Directory.EnumerateFiles(folder, "*" + PlanEnding).Order(StringComparer.Ordinal)
        let plan = PlanDocument.Read(File.ReadAllText(path)).Plan
        where plan is not null
        select (Path.GetFileName(path)[..^PlanEnding.Length], plan);
}
