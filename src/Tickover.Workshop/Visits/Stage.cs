namespace Tickover.Workshop.Visits;

/// <summary>The stages of a visit in the order of the route; a route and not a cage, so any may be opened at any time.</summary>
public enum Stage
{
    /// <summary>The brief, the bay and the car made ready, the survey as found, the baseline.</summary>
    Arrival,

    /// <summary>The tanks: sampled, drained, looked into, tested, cleaned, decided.</summary>
    Storage,

    /// <summary>Cross-linked tanks, vents, senders and the gauge.</summary>
    Gauge,

    /// <summary>Pipes, hoses, filters and pump.</summary>
    Supply,

    /// <summary>Carburettors off, stripped, cleaned, measured, jets and chokes identified.</summary>
    StripDown,

    /// <summary>Specification chosen, rebuilt, set on the bench, refitted, linkage set.</summary>
    Build,

    /// <summary>First fuel and start, warmed through, timing, air leaks, barrels balanced.</summary>
    Balance,

    /// <summary>Idle mixture, jets and chokes.</summary>
    Mixture,

    /// <summary>Road test, hot soak, the next morning.</summary>
    Road,

    /// <summary>The account written, the car handed back, the follow-up.</summary>
    HandOver,
}
