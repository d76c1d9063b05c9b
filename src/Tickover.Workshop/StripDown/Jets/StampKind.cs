namespace Tickover.Workshop.StripDown.Jets;

/// <summary>What the number on a jet says.</summary>
public enum StampKind
{
    /// <summary>The bore, hundredths of a millimetre.</summary>
    Bore = 0,

    /// <summary>The flow, ml a minute under its maker's head.</summary>
    Flow = 1,
}
