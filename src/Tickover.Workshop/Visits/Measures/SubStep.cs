namespace Tickover.Workshop.Visits.Measures;

/// <summary>The parts of the stages, in the order of the work: the headings under which measures stand.</summary>
public enum SubStep
{
    /// <summary>Brief and intake: a part of Arrival.</summary>
    Brief,

    /// <summary>Bay and car made ready: a part of Arrival.</summary>
    BaySafe,

    /// <summary>Survey as found: a part of Arrival.</summary>
    Survey,

    /// <summary>Baseline: a part of Arrival.</summary>
    Baseline,

    /// <summary>Is the engine fit to be tuned: a part of Arrival.</summary>
    EngineCondition,

    /// <summary>Fuel sampled and drained: a part of Storage.</summary>
    FuelSample,

    /// <summary>Tanks: a part of Storage.</summary>
    TankWork,

    /// <summary>Where the fuel is: a part of Gauge.</summary>
    LinkedTanks,

    /// <summary>Sender and needle: a part of Gauge.</summary>
    SenderAndNeedle,

    /// <summary>Filled in steps: a part of Gauge.</summary>
    Strapping,

    /// <summary>Pipes, hoses, filters: a part of Supply.</summary>
    HosesAndFilters,

    /// <summary>Pump and pressure: a part of Supply.</summary>
    Pump,

    /// <summary>Settings before stripping: a part of StripDown.</summary>
    AsFoundSettings,

    /// <summary>Cleaned: a part of StripDown.</summary>
    Cleaning,

    /// <summary>Jets and chokes: a part of StripDown.</summary>
    JetsAndChokes,

    /// <summary>Wear: a part of StripDown.</summary>
    Wear,

    /// <summary>Starting specification: a part of Build.</summary>
    Specification,

    /// <summary>Set on the bench: a part of Build.</summary>
    Bench,

    /// <summary>Linkage: a part of Build.</summary>
    Linkage,

    /// <summary>Fit to be tuned: a part of Balance.</summary>
    FitToTune,

    /// <summary>First fuel and start: a part of Balance.</summary>
    FirstStart,

    /// <summary>Warmed through, timing, air leaks: a part of Balance.</summary>
    WarmThrough,

    /// <summary>Barrels balanced: a part of Balance.</summary>
    BarrelBalance,

    /// <summary>Locked: a part of Balance.</summary>
    Locked,

    /// <summary>Idle mixture: a part of Mixture.</summary>
    IdleMixture,

    /// <summary>Jets and chokes tried: a part of Mixture.</summary>
    Jetting,

    /// <summary>Road test: a part of Road.</summary>
    RoadTest,

    /// <summary>Hot soak: a part of Road.</summary>
    HotSoak,

    /// <summary>Next morning: a part of Road.</summary>
    NextMorning,

    /// <summary>Handed back: a part of HandOver.</summary>
    HandedBack,

    /// <summary>Follow-up: a part of HandOver.</summary>
    FollowUp,
}
