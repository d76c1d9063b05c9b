namespace Tickover.Physics.Air;

/// <summary>The air the engine draws: state and gas constant.</summary>
public sealed record AmbientAir
{
    /// <summary>Absolute pressure, Pa.</summary>
    public required double PressurePascals { get; init; }

    /// <summary>Temperature, K.</summary>
    public required double TemperatureKelvin { get; init; }

    /// <summary>Density of the moist air, kg/m³.</summary>
    public required double DensityKilogramsPerCubicMetre { get; init; }

    /// <summary>Mass of dry air in a kilogram of moist air, kg/kg; only dry air burns fuel.</summary>
    public required double DryAirFraction { get; init; }

    /// <summary>Gas constant of the moist air, J/(kg K), from pressure, density and temperature.</summary>
    public double GasConstantJoulesPerKilogramKelvin => PressurePascals / (DensityKilogramsPerCubicMetre * TemperatureKelvin);
}
