namespace Tickover.Physics.Tanks;

/// <summary>What may be off between a shape and a fill.</summary>
public enum FillUnknownKind
{
    /// <summary>The tank holds more than drawn by this part.</summary>
    Scale,

    /// <summary>Fuel was in the tank at the beginning, m³.</summary>
    Left,

    /// <summary>The stick reads too much, m.</summary>
    Zero,

    /// <summary>The nose was up, rad.</summary>
    NoseUp,

    /// <summary>The left side was up, rad.</summary>
    LeftUp,
}
