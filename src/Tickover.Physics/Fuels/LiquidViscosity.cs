namespace Tickover.Physics.Fuels;

/// <summary>Dynamic viscosity of a liquid over temperature, by the handbooks' equation 101: ln µ = C1 + C2/T + C3 ln T + C4 T^C5.</summary>
/// <remarks>With C3 and C4 zero it is Andrade's equation.</remarks>
public sealed record LiquidViscosity
{
    /// <summary>Constant term, with µ in Pa s.</summary>
    public required double C1 { get; init; }

    /// <summary>Coefficient of 1/T, K.</summary>
    public required double C2 { get; init; }

    /// <summary>Coefficient of ln T, 1.</summary>
    public double C3 { get; init; }

    /// <summary>Coefficient of the power of T, K^-C5.</summary>
    public double C4 { get; init; }

    /// <summary>Power of T, 1.</summary>
    public double C5 { get; init; }

    /// <summary>Lower end of the range the source states, K.</summary>
    public required double MinimumKelvin { get; init; }

    /// <summary>Upper end of the range the source states, K.</summary>
    public required double MaximumKelvin { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required string Source { get; init; }

    /// <summary>Dynamic viscosity at a temperature, Pa s.</summary>
    /// <param name="temperatureKelvin">Temperature, K; above zero.</param>
    /// <returns>Pa s.</returns>
    public double At(double temperatureKelvin) => Math.Exp(LogarithmAt(temperatureKelvin));

    /// <summary>Natural logarithm of the viscosity in Pa s, which is what mixes.</summary>
    /// <param name="temperatureKelvin">Temperature, K; above zero.</param>
    /// <returns>1.</returns>
    internal double LogarithmAt(double temperatureKelvin)
    {
        var t = temperatureKelvin;
        return C1 + C2 / t + C3 * Math.Log(t) + C4 * Math.Pow(t, C5); // fuels (3)
    }
}
