namespace Tickover.Physics.Supply;

/// <summary>A regulator that holds the pressure behind it down to its setting.</summary>
public sealed record PressureRegulator : SupplyPart
{
    /// <summary>Pressure behind it at no flow, above the air, Pa; above zero.</summary>
    public required double SetGaugePascals { get; init; }

    /// <summary>How far the pressure behind it sinks for each unit of flow, Pa s/m³; not negative.</summary>
    public double DroopPascalSeconds { get; init; } = 2e8; // 2 kPa at 36 l/h: common practice for small diaphragm regulators

    /// <summary>Drop wide open for the square of the flow, Pa s²/m⁶; not negative.</summary>
    public double OpenResistance { get; init; }

    /// <inheritdoc/>
    internal override double Drop(double volumeFlow, double density, double viscosity) => QuadraticDrop.Of(OpenResistance, volumeFlow);

    /// <summary>The most it lets through, above the air, Pa.</summary>
    /// <param name="volumeFlow">Flow, m³/s.</param>
    /// <returns>Pa.</returns>
    internal double Ceiling(double volumeFlow) => SetGaugePascals - DroopPascalSeconds * volumeFlow; // supply (13)

    /// <inheritdoc/>
    internal override IEnumerable<string> OwnFaults() =>
    [
        .. SupplyText.NotAboveZero(Name, "setting in pascals", SetGaugePascals),
        .. SupplyText.Negative(Name, "droop", DroopPascalSeconds),
        .. SupplyText.Negative(Name, "resistance wide open", OpenResistance),
    ];
}
