namespace Tickover.Reports.Balance;

/// <summary>What an adjuster looks like from above.</summary>
internal enum AdjusterForm
{
    /// <summary>The slotted head of a screw.</summary>
    Screw,

    /// <summary>A fork with its screw and spring between two spindles.</summary>
    Coupling,

    /// <summary>A rod with ball ends and a turnbuckle.</summary>
    Rod,

    /// <summary>A hexagon: a nut, or a clamp.</summary>
    Nut,

    /// <summary>A knob turned by hand.</summary>
    Knob,
}
