namespace Tickover.Workshop.Mixture;

/// <summary>The circuit that gives most of the fuel at a point.</summary>
public enum FuelCircuit
{
    /// <summary>The mixture screw's port.</summary>
    Idle,

    /// <summary>The progression holes.</summary>
    Progression,

    /// <summary>The main nozzle with few emulsion holes uncovered.</summary>
    Main,

    /// <summary>The main nozzle with the air corrector at work: all rows uncovered.</summary>
    MainCorrecting,
}
