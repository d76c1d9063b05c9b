namespace Tickover.Physics.Sending;

/// <summary>How the air above the fuel gets in and out.</summary>
public enum TankVent
{
    /// <summary>Open to the outside: the air stays at the outside pressure.</summary>
    Free = 0,

    /// <summary>Joined to the other tank's air, and nowhere else: both share one pressure, so it moves no fuel across.</summary>
    Shared = 1,

    /// <summary>Shut: the air is a spring.</summary>
    Blocked = 2,
}
