namespace Tickover.Physics.Supply;

/// <summary>Where along the car a part lies, which says how warm it is around it.</summary>
public enum SupplyZone
{
    /// <summary>At the tank.</summary>
    Tank = 0,

    /// <summary>Under the floor.</summary>
    Chassis = 1,

    /// <summary>Under the bonnet.</summary>
    Bonnet = 2,
}
