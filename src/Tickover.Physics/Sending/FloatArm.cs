namespace Tickover.Physics.Sending;

/// <summary>A float on an arm that turns a resistance.</summary>
public sealed record FloatArm
{
    /// <summary>Pivot above the tank's floor, m.</summary>
    public required double PivotMetres { get; init; }

    /// <summary>Pivot to float, m.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Level at which the arm meets its lower stop, m.</summary>
    public required double LowestMetres { get; init; }

    /// <summary>Level at which the arm meets its upper stop, m.</summary>
    public required double HighestMetres { get; init; }

    /// <summary>Resistances at the lower and the upper stop.</summary>
    public required SenderFamily Family { get; init; }

    /// <summary>Whether the sender was fitted the wrong way round.</summary>
    public bool Reversed { get; init; }

    /// <summary>Angle of the arm from level, rad, without stops.</summary>
    /// <param name="level">Level at the float, m above the floor.</param>
    /// <returns>rad; straight up or down where the level is out of its reach.</returns>
    public double Angle(double level) => Math.Asin(Math.Clamp((level - PivotMetres) / LengthMetres, -1, 1)); // sending (14)

    /// <summary>Part of the travel between the stops.</summary>
    /// <param name="level">Level at the float, m above the floor.</param>
    /// <returns>0 at the lower stop, 1 at the upper one.</returns>
    public double Travel(double level)
    {
        var (low, high) = (Angle(LowestMetres), Angle(HighestMetres));
        return (Math.Clamp(Angle(level), low, high) - low) / (high - low); // sending (15)
    }

    /// <summary>Resistance of the sender.</summary>
    /// <param name="level">Level at the float, m above the floor.</param>
    /// <returns>Ω.</returns>
    public double Ohms(double level)
    {
        var travel = Travel(level);
        return Family.At(Reversed ? 1 - travel : travel); // sending (16)
    }

    internal FloatArm Checked()
    {
        Precondition.Positive(LengthMetres);
        Precondition.Positive(HighestMetres - LowestMetres);
        Precondition.Positive(Angle(HighestMetres) - Angle(LowestMetres));
        return this;
    }
}
