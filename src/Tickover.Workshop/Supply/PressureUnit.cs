namespace Tickover.Workshop.Supply;

/// <summary>The unit a document's pressures are written and shown in.</summary>
public enum PressureUnit
{
    /// <summary>bar.</summary>
    Bar = 0,

    /// <summary>Pounds for the square inch.</summary>
    Psi = 1,
}
