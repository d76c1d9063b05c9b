namespace Tickover.Workshop.Visits.Advising;

/// <summary>Sort of page an advice sends to.</summary>
public enum AdvicePlaceKind
{
    /// <summary>The visit itself: scope, dates, who waits.</summary>
    Visit,

    /// <summary>A stage.</summary>
    Stage,

    /// <summary>A gate.</summary>
    Gate,

    /// <summary>A finding.</summary>
    Finding,

    /// <summary>The list of parts.</summary>
    Parts,

    /// <summary>Questions to the owner.</summary>
    Approvals,

    /// <summary>The mixture page.</summary>
    Mixture,

    /// <summary>The instruments.</summary>
    Instruments,

    /// <summary>The road logs and the jets they ask for.</summary>
    RoadLogs,
}
