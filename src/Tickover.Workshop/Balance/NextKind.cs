namespace Tickover.Workshop.Balance;

/// <summary>Kinds of next thing to do.</summary>
public enum NextKind
{
    /// <summary>Read a round, or some barrels again.</summary>
    Read,

    /// <summary>Turn something.</summary>
    Turn,

    /// <summary>Take the rods off.</summary>
    RodsOff,

    /// <summary>Offer a rod to its ball and measure how much it is too long or short.</summary>
    OfferRod,

    /// <summary>Put the rods back.</summary>
    RodsOn,

    /// <summary>Look whether a stop touches.</summary>
    Look,

    /// <summary>Look for a fault and put it right.</summary>
    Repair,

    /// <summary>Nothing more to balance.</summary>
    Done,
}
