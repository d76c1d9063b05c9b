namespace Tickover.Workshop.Logs;

/// <summary>What a fast opening says of the accelerator pump.</summary>
public enum TipInVerdict
{
    /// <summary>The trace cannot decide; the reason says what would.</summary>
    CannotTell,

    /// <summary>The throttle was opened too slowly to ask the pump: a stumble here belongs to progression.</summary>
    SlowOpening,

    /// <summary>No lean spike, and no rich dip that lasts.</summary>
    Right,

    /// <summary>A lean spike: the shot brings too little.</summary>
    TooSmall,

    /// <summary>A rich dip that lasts more than a second, or goes beyond what burns well.</summary>
    TooLarge,

    /// <summary>A lean spike first and a rich dip behind it: enough fuel, too late.</summary>
    Late,

    /// <summary>A rich dip first and a lean spike behind it: the shot is spent before the walls are wet.</summary>
    SpentTooSoon,
}
