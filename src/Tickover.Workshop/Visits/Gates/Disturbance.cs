namespace Tickover.Workshop.Visits.Gates;

/// <summary>What, done after a check was signed, makes the check count no longer.</summary>
[Flags]
public enum Disturbance
{
    /// <summary>Nothing the record could tell of.</summary>
    None = 0,

    /// <summary>Fuel system or linkage opened: a part fitted or work done from the tanks to the carburettors, such a stage begun, or a fuel leak found.</summary>
    FuelOrLinkage = 1,

    /// <summary>A part fitted to the engine or its ignition: parts entered under Arrival and Balance.</summary>
    Engine = 2,

    /// <summary>Carburettors opened or refitted: parts and work of Strip-down and Build.</summary>
    Carburettors = 4,

    /// <summary>Settings moved or jets changed while the engine ran: parts and work of Balance and Mixture.</summary>
    Settings = 8,

    /// <summary>The day is over: the check holds for the day it was signed.</summary>
    NextDay = 16,
}
