namespace Tickover.Physics.Sending;

/// <summary>All that lies between the fuel and the driver's eye.</summary>
public sealed record SenderFitting
{
    /// <summary>The sender.</summary>
    public required TankSender First { get; init; }

    /// <summary>A second one in the other tank, each of half the resistance and both in series, so that the gauge sees their mean; none usually.</summary>
    public TankSender? Second { get; init; }

    /// <summary>The gauge.</summary>
    public required GaugeCircuit Gauge { get; init; }

    /// <summary>The lamp on the first sender; none: no lamp.</summary>
    public LowLamp? Lamp { get; init; }

    internal SenderFitting Checked()
    {
        First.Arm.Checked();
        Second?.Arm.Checked();
        Gauge.Checked();
        if (Second is { } second && second.Side == First.Side)
        {
            throw new InvalidOperationException("A second sender belongs in the other tank.");
        }

        return this;
    }
}
