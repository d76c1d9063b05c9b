namespace Tickover.Workshop.Visits.Gates;

/// <summary>Which gates stand before a stage and inside it.</summary>
public static class StageGates
{
    /// <summary>Gates to be open before the work of a stage is begun.</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>Gates in the order they are met; none for Arrival and Hand-over.</returns>
    public static IReadOnlyList<Gate> Of(Stage stage) => stage switch
    {
        Stage.Storage or Stage.Gauge or Stage.Supply or Stage.StripDown or Stage.Build => [Gate.BayReady],
        Stage.Balance => [Gate.EngineMayRun],
        Stage.Mixture => [Gate.EngineMayRun, Gate.FitToTune],
        Stage.Road => [Gate.FitForRoad],
        _ => [],
    };

    /// <summary>Gates met inside a stage: before a baseline with the engine running at Arrival, before the first round of a balance.</summary>
    /// <remarks>Balance begins with the first start and the hunt for air leaks, which its own prerequisites rest on; so that gate stands inside it.</remarks>
    /// <param name="stage">The stage.</param>
    /// <returns>Gates in the order they are met.</returns>
    public static IReadOnlyList<Gate> Inside(Stage stage) => stage switch
    {
        Stage.Arrival => [Gate.EngineMayRun],
        Stage.Balance => [Gate.FitToTune],
        _ => [],
    };
}
