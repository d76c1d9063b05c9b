namespace Tickover.Workshop.Balance;

/// <summary>How a barrel stands against its limit.</summary>
public enum Standing
{
    /// <summary>Not read.</summary>
    NotRead,

    /// <summary>Within the limit.</summary>
    Within,

    /// <summary>Less air than the limit allows.</summary>
    Low,

    /// <summary>More air than the limit allows.</summary>
    High,

    /// <summary>So near the limit that the reading cannot tell.</summary>
    CannotTell,
}
