namespace Tickover.Physics.Fuels;

/// <summary>Density of a pure liquid up to its critical point, by the extended Rackett equation of the handbooks (equation 105).</summary>
/// <remarks>Above the critical temperature, where there is no liquid, the critical density is given; the range says so.</remarks>
public sealed record SaturatedLiquidDensity : LiquidDensity
{
    /// <summary>First coefficient, kmol/m³.</summary>
    public required double C1 { get; init; }

    /// <summary>Second coefficient, 1.</summary>
    public required double C2 { get; init; }

    /// <summary>Critical temperature, K.</summary>
    public required double CriticalKelvin { get; init; }

    /// <summary>Fourth coefficient, 1.</summary>
    public required double C4 { get; init; }

    /// <summary>Molar mass, kg/kmol.</summary>
    public required double MolarMass { get; init; }

    /// <inheritdoc/>
    public override double At(double temperatureKelvin)
    {
        var distance = Math.Max(0, 1 - temperatureKelvin / CriticalKelvin);
        return MolarMass * C1 / Math.Pow(C2, 1 + Math.Pow(distance, C4)); // fuels (1)
    }
}
