namespace Tickover.Workshop.Gauges;

/// <summary>Something that may be done about a needle that swings.</summary>
public enum GaugeRemedy
{
    /// <summary>Nothing: as found.</summary>
    None = 0,

    /// <summary>A plate with a hole in the cross-pipe.</summary>
    Restrictor = 1,

    /// <summary>A flap in the cross-pipe that lets fuel go to the pick-up's side and little of it back.</summary>
    Flap = 2,

    /// <summary>A baffle in each tank.</summary>
    Baffle = 3,

    /// <summary>A needle three times as slow.</summary>
    SlowNeedle = 4,

    /// <summary>A second sender in the other tank, in series with the first, each of half the resistance.</summary>
    SecondSender = 5,

    /// <summary>The needle's mean over a minute and a half.</summary>
    Averaging = 6,
}
