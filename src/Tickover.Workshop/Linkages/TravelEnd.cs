namespace Tickover.Workshop.Linkages;

/// <summary>What ends the pedal's travel.</summary>
public enum TravelEnd
{
    /// <summary>The floor.</summary>
    Floor,

    /// <summary>A carburettor on its full-throttle stop.</summary>
    FullStop,

    /// <summary>A rod in line with the lever it turns: nothing moves on.</summary>
    DeadPoint,
}
