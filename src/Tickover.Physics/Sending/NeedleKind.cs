namespace Tickover.Physics.Sending;

/// <summary>What moves the needle.</summary>
public enum NeedleKind
{
    /// <summary>A strip warmed by the current: slow, follows the square of the current, wants a steady supply.</summary>
    Thermal = 0,

    /// <summary>Two coils that pull against each other: quick, follows their ratio, minds no supply.</summary>
    MovingIron = 1,
}
