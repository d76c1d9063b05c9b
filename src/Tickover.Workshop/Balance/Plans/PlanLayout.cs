namespace Tickover.Workshop.Balance.Plans;

/// <summary>How the carburettors stand on the engine and follow one another; the four cases of the trade.</summary>
public enum PlanLayout
{
    /// <summary>Several twin-barrel carburettors over two banks, a barrel to a cylinder, each carburettor on a stop of its own, rods between them.</summary>
    TwoBanks,

    /// <summary>Twin-barrel carburettors in line on one spindle train, joined by couplings with a screw and a spring; one of them is the reference.</summary>
    InLine,

    /// <summary>Two constant-depression carburettors on a shared manifold, each with its stop, joined by a clamp.</summary>
    ConstantDepression,

    /// <summary>Four carburettors of a motorcycle, joined by link screws; one is fixed and the knob in the middle moves all.</summary>
    MotorcycleFour,
}
