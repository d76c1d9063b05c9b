namespace Tickover.Physics.Sending;

/// <summary>Gauge, wiring and supply: what the needle shows for a resistance in the tank.</summary>
/// <remarks>The dial is taken as printed for its own family at its own voltage: there it shows the sender's travel exactly.</remarks>
public sealed record GaugeCircuit
{
    /// <summary>The resistances the dial was made for.</summary>
    public required SenderFamily Family { get; init; }

    /// <summary>What moves the needle.</summary>
    public NeedleKind Kind { get; init; }

    /// <summary>Resistance of the gauge itself, Ω; an assumption of 60 Ω unless measured. Only a thermal one needs it.</summary>
    public double GaugeOhms { get; init; } = 60;

    /// <summary>Mean voltage the dial was made for, V.</summary>
    public double DialVolts { get; init; } = 10;

    /// <summary>Mean voltage at the gauge, V: a stabiliser that works gives <see cref="DialVolts"/>.</summary>
    public double SupplyVolts { get; init; } = 10;

    /// <summary>Resistance added by wire, plugs and a poor earth, Ω.</summary>
    public double AddedOhms { get; init; }

    /// <summary>A wire that is off or touches.</summary>
    public WiringFault Fault { get; init; }

    /// <summary>Time in which the needle makes 63 % of its way, s: thermal 10 to 30, moving iron 0.3 to 1 (assumptions; measure it).</summary>
    public double TimeConstantSeconds { get; init; } = 12;

    /// <summary>Where the pointer rests when it is driven past the marks, in parts of the scale.</summary>
    public const double Overrun = 0.08;

    private const double OpenOhms = 1e9;

    /// <summary>What drives the needle: power for a thermal one in A², resistance for a moving-iron one in Ω.</summary>
    /// <param name="senderOhms">Resistance at the tank, Ω.</param>
    /// <returns>The signal the needle follows with its lag.</returns>
    public double Signal(double senderOhms)
    {
        var seen = Fault switch { WiringFault.Open => OpenOhms, WiringFault.Short => 0, _ => senderOhms + AddedOhms };
        if (Kind == NeedleKind.MovingIron)
        {
            // The ratio of two coils saturates; a bounded stand-in keeps an open wire from driving the lag for ever.
            return Math.Clamp(seen, Lowest, Highest);
        }

        var current = SupplyVolts / (GaugeOhms + seen);
        return current * current; // sending (17)
    }

    /// <summary>Where the needle points for a signal it has settled on.</summary>
    /// <param name="signal">A signal of <see cref="Signal"/>, lagged.</param>
    /// <returns>0 at E, 1 at F, up to <see cref="Overrun"/> beyond.</returns>
    public double Shown(double signal)
    {
        var ohms = Kind == NeedleKind.MovingIron ? signal : DialVolts / Math.Sqrt(Math.Max(signal, 1e-12)) - GaugeOhms;
        return Math.Clamp(Family.Travel(ohms), -Overrun, 1 + Overrun); // sending (18)
    }

    private double Lowest => Math.Min(Family.At(-Overrun), Family.At(1 + Overrun));

    private double Highest => Math.Max(Family.At(-Overrun), Family.At(1 + Overrun));

    internal GaugeCircuit Checked()
    {
        Precondition.Positive(GaugeOhms);
        Precondition.Positive(DialVolts);
        Precondition.Positive(SupplyVolts);
        Precondition.NotNegative(AddedOhms);
        Precondition.Positive(TimeConstantSeconds);
        Precondition.Positive(Math.Abs(Family.FullOhms - Family.EmptyOhms));
        return this;
    }
}
