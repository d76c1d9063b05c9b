namespace Tickover.Workshop.Visits.Gates;

/// <summary>The four gates with their checks. Common practice of the trade unless a source says otherwise.</summary>
public static class GateCatalogue
{
    /// <summary>All gates in the order of the route.</summary>
    public static IReadOnlyList<GateDefinition> All { get; } =
    [
        new(Gate.BayReady, "bay ready", "fuel is touched", BayChecks.All),
        new(Gate.EngineMayRun, "engine may run", "the engine runs", EngineChecks.All),
        new(Gate.FitToTune, "fit to tune", "balance and mixture", TuneChecks.All),
        new(Gate.FitForRoad, "fit for the road", "the road", RoadChecks.All),
    ];

    /// <summary>A gate.</summary>
    /// <param name="gate">Which.</param>
    /// <returns>Its definition.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gate.</exception>
    public static GateDefinition Of(Gate gate) =>
        All.FirstOrDefault(g => g.Gate == gate) ?? throw new ArgumentOutOfRangeException(nameof(gate), gate, "One of the four gates is needed.");

    /// <summary>A check by its key; never throws.</summary>
    /// <param name="key">Key, such as "leaks".</param>
    /// <returns>The check, or null.</returns>
    public static GateCheck? Find(string? key) => All.SelectMany(g => g.Checks).FirstOrDefault(c => string.Equals(c.Key, key, StringComparison.Ordinal));
}
