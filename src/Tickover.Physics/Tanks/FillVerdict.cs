namespace Tickover.Physics.Tanks;

/// <summary>What a fill says of the shape.</summary>
public enum FillVerdict
{
    /// <summary>Shape and fill agree within what is usual.</summary>
    Agree,

    /// <summary>They agree once one thing is set right that is further off than usual.</summary>
    AgreeSetRight,

    /// <summary>No such thing makes them agree: the fill's table is the one to keep.</summary>
    Differ,
}
