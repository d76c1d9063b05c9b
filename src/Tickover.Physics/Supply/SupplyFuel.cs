using Tickover.Physics.Fuels;

namespace Tickover.Physics.Supply;

/// <summary>The fuel in the line: what it is blended of and how readily it boils.</summary>
public sealed record SupplyFuel
{
    /// <summary>What it is blended of.</summary>
    public required FuelBlend Blend { get; init; }

    /// <summary>Vapour pressure of the blend as it is in the tank, at 37.8 °C, Pa; above zero. EN 228 allows 45 to 60 kPa in summer, 60 to 90 in winter.</summary>
    public required double VapourPressureAt38Pascals { get; init; }

    /// <summary>Part evaporated at 70 °C, 1; null where unknown.</summary>
    public double? EvaporatedAt70Fraction { get; init; }

    /// <summary>True vapour pressure at a temperature, Pa absolute.</summary>
    /// <param name="temperatureKelvin">Temperature, K; above zero.</param>
    /// <returns>Pa.</returns>
    public double VapourPressure(double temperatureKelvin) => FuelVapour.TruePressure(VapourPressureAt38Pascals, temperatureKelvin);
}
