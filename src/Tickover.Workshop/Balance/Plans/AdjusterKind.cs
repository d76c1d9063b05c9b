namespace Tickover.Workshop.Balance.Plans;

/// <summary>What can be turned to balance carburettors.</summary>
public enum AdjusterKind
{
    /// <summary>The throttle stop (idle speed) screw of a carburettor: resting angle of its plates, both barrels.</summary>
    StopScrew,

    /// <summary>The air by-pass screw of a barrel: adds air to that barrel, never takes any away.</summary>
    BypassScrew,

    /// <summary>The idle mixture screw of a barrel: emulsion, or air where it is of the air kind.</summary>
    MixtureScrew,

    /// <summary>The jet nut of a constant-depression carburettor.</summary>
    JetNut,

    /// <summary>The coupling screw between neighbours on one spindle train.</summary>
    CouplingScrew,

    /// <summary>The rod between two carburettors of a bank.</summary>
    LinkRod,

    /// <summary>The rod between the banks.</summary>
    BankRod,

    /// <summary>The clamp of a carburettor's lever on its spindle: phase and rate.</summary>
    LeverClamp,

    /// <summary>The one stop of the whole linkage.</summary>
    MasterStop,
}
