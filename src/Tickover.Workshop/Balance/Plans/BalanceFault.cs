namespace Tickover.Workshop.Balance.Plans;

/// <summary>What makes barrels unlike besides screws that merely want turning.</summary>
public enum BalanceFault
{
    /// <summary>A plate seated askew, bent or fitted upside down: one barrel off by about the same air everywhere.</summary>
    PlateSeating,

    /// <summary>A spindle twisted between its barrels: one barrel always shut or open by the same angle, whatever the stop.</summary>
    TwistedSpindle,

    /// <summary>A rod that holds a carburettor's plates off their stop: its stop screw does nothing.</summary>
    StopNotTouching,

    /// <summary>A rod or coupling of the wrong length: one carburettor or bank off as soon as the linkage moves, by the same angle.</summary>
    RodLength,

    /// <summary>A lever clamped at the wrong angle: right at idle, further off the further it opens.</summary>
    LeverAngle,

    /// <summary>Air let in below the plate of one barrel: the meter does not see it, vacuum falls, the mixture is lean.</summary>
    LeakBelowPlate,

    /// <summary>The meter does not seal on one barrel: too little by the same part everywhere.</summary>
    MeterSeal,

    /// <summary>A weak cylinder (valve, rings, compression): air and mixture right, vacuum low.</summary>
    WeakCylinder,

    /// <summary>Ignition of one bank late: vacuum of the bank low, its headers hot, air and mixture right.</summary>
    BankTiming,

    /// <summary>A worn spindle or ball joint of one carburettor: it never reads the same twice.</summary>
    WornSpindle,

    /// <summary>A screw that does nothing: seized, broken or its drilling blocked.</summary>
    DeadScrew,
}
