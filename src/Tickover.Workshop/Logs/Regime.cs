namespace Tickover.Workshop.Logs;

/// <summary>What the engine was doing: which circuit feeds it, by opening, load and rate.</summary>
public enum Regime
{
    /// <summary>Throttle at its stop, engine turning over by itself.</summary>
    Idle,

    /// <summary>Plate sweeping the progression holes.</summary>
    Progression,

    /// <summary>Progression handing over to the main circuit.</summary>
    Changeover,

    /// <summary>Main circuit at part load.</summary>
    Cruise,

    /// <summary>Throttle wide open or nearly so.</summary>
    FullLoad,

    /// <summary>Throttle opening fast, and the second or two after it.</summary>
    TipIn,

    /// <summary>Throttle shut, car driving the engine.</summary>
    Overrun,
}
