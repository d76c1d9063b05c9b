namespace Tickover.Physics.Fuels;

/// <summary>How much air a fuel of known composition needs to burn completely.</summary>
/// <remarks>
/// Air is 20.95 % oxygen by volume with 28.9647 kg/kmol. Texts that take 21 % and 28 kg/kmol come out lower (15.03 for iso-octane):
/// the difference is in their air, not in the fuel.
/// </remarks>
public static class Stoichiometry
{
    /// <summary>Atomic mass of carbon, kg/kmol (IUPAC, rounded).</summary>
    public const double CarbonMass = 12.011;

    /// <summary>Atomic mass of hydrogen, kg/kmol (IUPAC, rounded).</summary>
    public const double HydrogenMass = 1.008;

    /// <summary>Atomic mass of oxygen, kg/kmol (IUPAC, rounded).</summary>
    public const double OxygenMass = 15.999;

    /// <summary>Volume fraction of oxygen in dry air, 1.</summary>
    public const double OxygenInAir = 0.2095;

    /// <summary>Molar mass of dry air, kg/kmol.</summary>
    public const double DryAirMolarMass = 28.9647;

    /// <summary>Mass of a molecule, kg/kmol.</summary>
    /// <param name="carbon">Carbon atoms.</param>
    /// <param name="hydrogen">Hydrogen atoms.</param>
    /// <param name="oxygen">Oxygen atoms.</param>
    /// <returns>kg/kmol.</returns>
    public static double MolarMass(double carbon, double hydrogen, double oxygen) =>
        CarbonMass * carbon + HydrogenMass * hydrogen + OxygenMass * oxygen;

    /// <summary>Moles of oxygen that burn one mole of fuel to carbon dioxide and water.</summary>
    /// <param name="carbon">Carbon atoms.</param>
    /// <param name="hydrogen">Hydrogen atoms.</param>
    /// <param name="oxygen">Oxygen atoms.</param>
    /// <returns>mol/mol.</returns>
    public static double OxygenDemand(double carbon, double hydrogen, double oxygen) => carbon + hydrogen / 4 - oxygen / 2; // fuels (4)

    /// <summary>Stoichiometric mass of dry air to mass of fuel.</summary>
    /// <param name="carbon">Carbon atoms.</param>
    /// <param name="hydrogen">Hydrogen atoms.</param>
    /// <param name="oxygen">Oxygen atoms.</param>
    /// <returns>1.</returns>
    public static double AirFuelRatio(double carbon, double hydrogen, double oxygen) =>
        OxygenDemand(carbon, hydrogen, oxygen) / OxygenInAir * DryAirMolarMass / MolarMass(carbon, hydrogen, oxygen); // fuels (5)
}
