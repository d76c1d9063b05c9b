namespace Tickover.Physics.Fuels;

/// <summary>A fuel at one temperature, as the jets and the exhaust see it.</summary>
public sealed record FuelProperties
{
    /// <summary>Density, kg/m³.</summary>
    public required double DensityKilogramsPerCubicMetre { get; init; }

    /// <summary>Dynamic viscosity, Pa s.</summary>
    public required double ViscosityPascalSeconds { get; init; }

    /// <summary>Stoichiometric mass of dry air to mass of fuel, 1.</summary>
    public required double StoichiometricRatio { get; init; }
}
