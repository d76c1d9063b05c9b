namespace Tickover.Workshop.Mixture;

/// <summary>Why a point of the map is to be taken with care, or not at all.</summary>
[Flags]
public enum PointValidity
{
    /// <summary>Within the range of every model used.</summary>
    Inside = 0,

    /// <summary>The engine gives no work here: on the overrun it is driven by the car.</summary>
    Overrun = 1,

    /// <summary>Too lean to burn steadily: an engine does not run here.</summary>
    TooLeanToRun = 2,

    /// <summary>Too rich to burn steadily.</summary>
    TooRichToRun = 4,

    /// <summary>The choke's throat runs near or at the speed of sound.</summary>
    ChokeNearSonic = 8,

    /// <summary>A jet runs outside the Reynolds range of its coefficient.</summary>
    JetOutsideRange = 16,

    /// <summary>The periodic solution did not settle within its tolerance.</summary>
    NotSettled = 32,

    /// <summary>Speed beyond what the engine is meant for.</summary>
    BeyondRatedSpeed = 64,

    /// <summary>No fuel flows at all, so there is no ratio.</summary>
    NoFuel = 128,

    /// <summary>No air passes, so there is no mixture.</summary>
    NoAir = 256,
}
