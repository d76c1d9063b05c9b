namespace Tickover.Physics.Gauges;

/// <summary>Where the needle of a gauge stands for a resistance, once it has settled. docs/physics/gauges.md (2) to (4).</summary>
public sealed record GaugeLaw
{
    /// <summary>Resistance of a heated strip's winding, Ω; an assumption, no published figure found.</summary>
    public const double AssumedCoilOhms = 60;

    private const double LowestNeedle = -0.06;
    private const double HighestNeedle = 1.08;

    /// <summary>The family it is made for.</summary>
    public required SenderFamily Family { get; init; }

    /// <summary>Voltage at the gauge against what it was made for, 1; matters to a heated strip alone.</summary>
    public double VoltagePart { get; init; } = 1;

    /// <summary>Resistance of the heated strip's winding, Ω.</summary>
    public double CoilOhms { get; init; } = AssumedCoilOhms;

    /// <summary>Where the needle settles.</summary>
    /// <param name="ohms">Resistance from the gauge's terminal to its earth, Ω; infinite for an open wire.</param>
    /// <returns>0 at E, 1 at F; the pegs a little beyond.</returns>
    public double NeedleAt(double ohms) => Math.Clamp(Free(Math.Max(0, ohms)), LowestNeedle, HighestNeedle);

    /// <summary>Where it would settle without pegs.</summary>
    /// <param name="ohms">Resistance, Ω.</param>
    /// <returns>0 at E, 1 at F.</returns>
    public double Free(double ohms)
    {
        if (double.IsPositiveInfinity(ohms))
        {
            return Family.Falls ? LowestNeedle : HighestNeedle;
        }

        if (!Family.Thermal)
        {
            return (ohms - Family.EmptyOhms) / (Family.FullOhms - Family.EmptyOhms); // gauges (2)
        }

        var (empty, full) = (Heat(Family.EmptyOhms), Heat(Family.FullOhms));
        return (VoltagePart * VoltagePart * Heat(ohms) - empty) / (full - empty);     // gauges (4)
    }

    private double Heat(double ohms) => 1 / ((CoilOhms + ohms) * (CoilOhms + ohms));  // gauges (3)
}
