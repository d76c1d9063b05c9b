namespace Tickover.Physics.Sending;

/// <summary>One of two tanks joined by a pipe.</summary>
public sealed record LinkedTank
{
    /// <summary>Level against volume.</summary>
    public required LevelTable Table { get; init; }

    /// <summary>Inside width across the car, m: the length of the sideways slosh.</summary>
    public required double WidthMetres { get; init; }

    /// <summary>Inside length along the car, m: the length of the fore-and-aft slosh.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>The tank's middle, to the left of the car's middle line, m; negative to the right.</summary>
    public double LeftMetres { get; init; }

    /// <summary>The tank's middle, ahead of any mark common to both, m.</summary>
    public double AheadMetres { get; init; }

    /// <summary>Its floor above any mark common to both, m.</summary>
    public double FloorMetres { get; init; }

    /// <summary>Where the cross-pipe leaves it.</summary>
    public TankPlace Port { get; init; }

    /// <summary>How its air is vented.</summary>
    public TankVent Vent { get; init; }

    /// <summary>Damping of the slosh as a part of the critical one, 1: plain 0.03, with a baffle 0.2 and more (assumptions; see the page).</summary>
    public double SloshDamping { get; init; } = PlainDamping;

    /// <summary>Damping of the first slosh of a small tank with seams and a sender in it, 1; fitted to nothing, an assumption.</summary>
    public const double PlainDamping = 0.03;

    internal LinkedTank Checked()
    {
        Precondition.Positive(WidthMetres);
        Precondition.Positive(LengthMetres);
        Precondition.Finite(LeftMetres);
        Precondition.Finite(AheadMetres);
        Precondition.Finite(FloorMetres);
        Precondition.Within(SloshDamping, 0, 0.95);
        return this;
    }
}
