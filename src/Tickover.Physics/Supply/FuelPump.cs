namespace Tickover.Physics.Supply;

/// <summary>The pump of the line.</summary>
public sealed record FuelPump : SupplyPart
{
    /// <summary>Mechanical or electric.</summary>
    public required PumpKind Kind { get; init; }

    /// <summary>What it adds over what it passes, as measured.</summary>
    public required PumpCurve Curve { get; init; }

    /// <summary>Engine speed the curve of a mechanical pump was measured at, rev/min; null where the curve holds at any.</summary>
    public double? MeasuredRpm { get; init; }

    /// <summary>Engine speed up to which a mechanical pump's flow goes on growing, rev/min; null: no more than at <see cref="MeasuredRpm"/>.</summary>
    public double? GrowsToRpm { get; init; }

    /// <summary>Voltage the curve of an electric pump was measured at, V; null where the curve holds at any.</summary>
    public double? MeasuredVolts { get; init; }

    /// <summary>Head it needs at its inlet above the fuel's vapour pressure, m of fuel; not negative.</summary>
    public double RequiredSuctionHeadMetres { get; init; }

    /// <summary>How much of the measured flow it passes at an engine speed and a voltage, 1.</summary>
    /// <param name="engineRpm">Engine speed, rev/min; null where it was not said.</param>
    /// <param name="volts">Voltage at the pump, V; null where it was not said.</param>
    /// <returns>1; one where nothing was said.</returns>
    public double FlowFactor(double? engineRpm, double? volts)
    {
        if (Kind == PumpKind.Electric)
        {
            return MeasuredVolts is { } measured && volts is { } now ? now / measured : 1;
        }

        return MeasuredRpm is { } speed && engineRpm is { } rpm
            ? Math.Min(rpm, Math.Max(speed, GrowsToRpm ?? speed)) / speed // supply (10)
            : 1;
    }

    /// <inheritdoc/>
    internal override double Drop(double volumeFlow, double density, double viscosity) => -Curve.At(volumeFlow);

    /// <inheritdoc/>
    internal override IEnumerable<string> OwnFaults() =>
    [
        .. MeasuredRpm is { } rpm ? SupplyText.NotAboveZero(Name, "engine speed of the measurement", rpm) : [],
        .. MeasuredVolts is { } volts ? SupplyText.NotAboveZero(Name, "voltage of the measurement", volts) : [],
        .. SupplyText.Negative(Name, "suction head it needs in metres", RequiredSuctionHeadMetres),
    ];
}
