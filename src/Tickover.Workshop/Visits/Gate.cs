namespace Tickover.Workshop.Visits;

/// <summary>A tap in the route: what must be checked and signed before going on.</summary>
public enum Gate
{
    /// <summary>Bay and car made ready for work on fuel.</summary>
    BayReady,

    /// <summary>Before the engine runs.</summary>
    EngineMayRun,

    /// <summary>Before balance and mixture: the engine is fit to be tuned.</summary>
    FitToTune,

    /// <summary>Before the road.</summary>
    FitForRoad,
}
