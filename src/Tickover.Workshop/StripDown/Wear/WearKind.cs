namespace Tickover.Workshop.StripDown.Wear;

/// <summary>What was measured.</summary>
public enum WearKind
{
    /// <summary>Spindle in its bush.</summary>
    Spindle = 0,

    /// <summary>Light past the shut plate.</summary>
    Light = 1,

    /// <summary>Angle of the shut plate.</summary>
    Angle = 2,

    /// <summary>Bore where the plate shuts.</summary>
    Bore = 3,

    /// <summary>Flange to the engine.</summary>
    Flange = 4,

    /// <summary>Needle valve.</summary>
    Needle = 5,

    /// <summary>Accelerator pump.</summary>
    Pump = 6,

    /// <summary>Emulsion tube.</summary>
    Tube = 7,

    /// <summary>Throttle stop.</summary>
    Stop = 8,
}
