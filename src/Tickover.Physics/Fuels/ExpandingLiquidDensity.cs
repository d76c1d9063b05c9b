namespace Tickover.Physics.Fuels;

/// <summary>Density of a liquid known by one density and its cubic expansion, as for petrol.</summary>
public sealed record ExpandingLiquidDensity : LiquidDensity
{
    /// <summary>Density at 20 °C, kg/m³.</summary>
    public required double DensityAtReference { get; init; }

    /// <summary>Coefficient of cubic expansion, 1/K.</summary>
    public required double ExpansionPerKelvin { get; init; }

    /// <inheritdoc/>
    public override double At(double temperatureKelvin) =>
        DensityAtReference * Math.Exp(-ExpansionPerKelvin * (temperatureKelvin - FuelBlend.ReferenceKelvin)); // fuels (2)
}
