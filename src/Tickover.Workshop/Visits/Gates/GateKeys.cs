namespace Tickover.Workshop.Visits.Gates;

/// <summary>Keys of the checks that other parts of the program know by name.</summary>
public static class GateKeys
{
    /// <summary>The leak check before the engine runs.</summary>
    public const string Leaks = "leaks";

    /// <summary>The throttle-free check before the engine runs.</summary>
    public const string ThrottleFree = "throttle-free";

    /// <summary>Extraction and carbon monoxide alarm; holds for its day.</summary>
    public const string Ventilation = "ventilation";

    /// <summary>The leak check after running, before the road.</summary>
    public const string RoadLeaks = "road-leaks";

    /// <summary>The throttle sign-off before the road.</summary>
    public const string RoadThrottle = "road-throttle";
}
