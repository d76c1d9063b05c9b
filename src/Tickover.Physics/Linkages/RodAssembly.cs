namespace Tickover.Physics.Linkages;

/// <summary>The two ways a rod can be put between two levers. Moving, it keeps to one until it comes to a dead point.</summary>
public enum RodAssembly
{
    /// <summary>The driven lever turned right-handed from the line to the driving ball.</summary>
    First,

    /// <summary>The driven lever turned the other way.</summary>
    Second,
}
