namespace Tickover.Physics.Fuels;

/// <summary>Density of a liquid over temperature.</summary>
public abstract record LiquidDensity
{
    /// <summary>Lower end of the range the source states, K.</summary>
    public required double MinimumKelvin { get; init; }

    /// <summary>Upper end of the range the source states, K.</summary>
    public required double MaximumKelvin { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required string Source { get; init; }

    /// <summary>Density at a temperature, kg/m³.</summary>
    /// <param name="temperatureKelvin">Temperature, K; above zero.</param>
    /// <returns>kg/m³.</returns>
    public abstract double At(double temperatureKelvin);
}
