namespace Tickover.Physics.Fuels;

/// <summary>One liquid a fuel is blended from: its atoms, density and viscosity.</summary>
/// <remarks>For petrol the atoms are those of one carbon's share of the mixture, so that carbon counts one.</remarks>
public sealed record FuelComponent
{
    /// <summary>Name as written in a car's document, such as "ethanol".</summary>
    public required string Name { get; init; }

    /// <summary>Carbon atoms in the molecule, 1; above zero.</summary>
    public required double Carbon { get; init; }

    /// <summary>Hydrogen atoms in the molecule, 1.</summary>
    public required double Hydrogen { get; init; }

    /// <summary>Oxygen atoms in the molecule, 1.</summary>
    public double Oxygen { get; init; }

    /// <summary>Density over temperature.</summary>
    public required LiquidDensity Density { get; init; }

    /// <summary>Viscosity over temperature.</summary>
    public required LiquidViscosity Viscosity { get; init; }

    /// <summary>Mass of the molecule (or of one carbon's share), kg/kmol.</summary>
    public double MolarMass => Stoichiometry.MolarMass(Carbon, Hydrogen, Oxygen);

    /// <summary>Stoichiometric mass of dry air to mass of fuel, 1.</summary>
    public double StoichiometricRatio => Stoichiometry.AirFuelRatio(Carbon, Hydrogen, Oxygen);
}
