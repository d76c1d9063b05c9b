using Tickover.Physics.Gauges;

namespace Tickover.Physics.Sending;

/// <summary>From ohms to the place where the needle comes to rest. docs/physics/sending.md (16) to (19).</summary>
public sealed record GaugeCircuit
{
    /// <summary>Mean of a stabiliser for heated-strip gauges, V; the trade's figure.</summary>
    public const double StabiliserVolts = 10;

    /// <summary>How far past either end of the scale a needle can go before it meets its stop, of the scale; an assumption.</summary>
    public const double PegScale = 0.06;

    /// <summary>An open wire, Ω.</summary>
    public const double OpenOhms = 1e9;

    /// <summary>The sender fitted.</summary>
    public required SenderFamily Sender { get; init; }

    /// <summary>The family the gauge was made for; the sender's own where not said.</summary>
    public SenderFamily? MadeFor { get; init; }

    /// <summary>What moves the needle.</summary>
    public GaugeMovement Movement { get; init; } = GaugeMovement.Thermal;

    /// <summary>Resistance of the gauge itself, Ω; above zero.</summary>
    public double GaugeOhms { get; init; } = 65;

    /// <summary>Voltage the gauge gets, V; above zero.</summary>
    public double Volts { get; init; } = StabiliserVolts;

    /// <summary>Voltage it was made for, V; above zero.</summary>
    public double MadeForVolts { get; init; } = StabiliserVolts;

    /// <summary>Resistance of a bad earth or joint in series with the sender, Ω; not below zero.</summary>
    public double SeriesOhms { get; init; }

    /// <summary>A fault of the wire.</summary>
    public WireFault Fault { get; init; }

    /// <summary>What the gauge sees of a sender's resistance.</summary>
    /// <param name="senderOhms">The sender's own, Ω.</param>
    /// <returns>Ω.</returns>
    public double Seen(double senderOhms) => Fault switch
    {
        WireFault.Open => OpenOhms,
        WireFault.Short => 0,
        _ => senderOhms + SeriesOhms,
    };

    /// <summary>Where the needle comes to rest.</summary>
    /// <param name="senderOhms">The sender's own resistance, Ω.</param>
    /// <returns>0 at E, 1 at F; beyond by at most <see cref="PegScale"/>.</returns>
    public double NeedleAt(double senderOhms) => ToRest().NeedleAt(senderOhms);

    internal RestingNeedle ToRest()
    {
        var family = MadeFor ?? Sender;
        var power = Movement is GaugeMovement.Thermal;
        var (empty, full) = (Pull(family.EmptyOhms, MadeForVolts, power), Pull(family.FullOhms, MadeForVolts, power));
        var volts = power ? Volts : MadeForVolts; // the coils' share does not mind the voltage
        return new RestingNeedle(power, volts, GaugeOhms, SeriesOhms, Fault, empty, 1 / (full - empty));
    }

    // sending (17), (18): the power in the strip for one ohm of it, or the coils' share.
    private double Pull(double ohms, double volts, bool power)
    {
        var current = volts / (GaugeOhms + ohms);
        return power ? current * current : current;
    }
}
