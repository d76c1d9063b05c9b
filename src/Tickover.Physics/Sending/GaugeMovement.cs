namespace Tickover.Physics.Sending;

/// <summary>What moves the needle.</summary>
public enum GaugeMovement
{
    /// <summary>A heated strip bends with the mean power in it: slow, and it follows the voltage.</summary>
    Thermal,

    /// <summary>Coils pull a piece of iron: quick, and hardly minding the voltage.</summary>
    MovingIron,
}
