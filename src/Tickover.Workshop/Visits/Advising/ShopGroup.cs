namespace Tickover.Workshop.Visits.Advising;

/// <summary>Who has the ball, as the home page groups it.</summary>
public enum ShopGroup
{
    /// <summary>Waits on us.</summary>
    Us,

    /// <summary>Waits on the owner.</summary>
    Owner,

    /// <summary>Waits on parts or the clock.</summary>
    PartsOrClock,
}
