namespace Tickover.Workshop.Exhaust;

/// <summary>Which fuel the λ formula is told of.</summary>
public enum FuelConstants
{
    /// <summary>The regulation's, whatever is in the tank: what analysers show.</summary>
    Regulation = 0,

    /// <summary>Those of the fuel in the tank.</summary>
    Fuel = 1,
}
