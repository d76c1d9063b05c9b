namespace Tickover.Workshop.Visits;

/// <summary>Where a part is.</summary>
public enum PartState
{
    /// <summary>To be ordered.</summary>
    ToOrder,

    /// <summary>Ordered.</summary>
    Ordered,

    /// <summary>Here, not fitted.</summary>
    Here,

    /// <summary>Fitted.</summary>
    Fitted,
}
