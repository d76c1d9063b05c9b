namespace Tickover.Physics.Supply;

/// <summary>What drives a fuel pump.</summary>
public enum PumpKind
{
    /// <summary>By a cam of the engine: it strokes with the engine's speed, its spring sets the pressure.</summary>
    Mechanical = 0,

    /// <summary>By the battery: its flow goes with the voltage.</summary>
    Electric = 1,
}
