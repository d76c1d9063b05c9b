using Tickover.Physics.Fuels;

namespace Tickover.Physics.Exhaust;

/// <summary>A fuel as its exhaust shows it: atoms for each atom of carbon.</summary>
public sealed record ExhaustFuel
{
    private const double MostHydrogen = 4;
    private const double MostOxygen = 1;

    /// <summary>A fuel by its atoms.</summary>
    /// <param name="hydrogenToCarbon">Atoms of hydrogen for each of carbon, 0 to 4 (methane, methanol).</param>
    /// <param name="oxygenToCarbon">Atoms of oxygen for each of carbon, 0 to 1 (methanol).</param>
    /// <exception cref="ArgumentOutOfRangeException">A ratio is out of range.</exception>
    public ExhaustFuel(double hydrogenToCarbon, double oxygenToCarbon)
    {
        HydrogenToCarbon = Precondition.Within(hydrogenToCarbon, 0, MostHydrogen);
        OxygenToCarbon = Precondition.Within(oxygenToCarbon, 0, MostOxygen);
    }

    /// <summary>The fuel the regulation's formula assumes, whatever is in the tank: H/C 1.7261, O/C 0.0176.</summary>
    /// <remarks>OIML R 99 and ISO 3930, from memory; open inspection records agree with them.</remarks>
    public static ExhaustFuel Regulation { get; } = new(1.7261, 0.0176);

    /// <summary>Atoms of hydrogen for each of carbon, 1.</summary>
    public double HydrogenToCarbon { get; }

    /// <summary>Atoms of oxygen for each of carbon, 1.</summary>
    public double OxygenToCarbon { get; }

    /// <summary>Moles of oxygen that burn the fuel holding one mole of carbon, 1.</summary>
    public double OxygenDemand => Stoichiometry.OxygenDemand(1, HydrogenToCarbon, OxygenToCarbon);

    /// <summary>Stoichiometric mass of dry air to mass of fuel, 1.</summary>
    public double StoichiometricRatio => Stoichiometry.AirFuelRatio(1, HydrogenToCarbon, OxygenToCarbon);

    /// <summary>The fuel of a blend.</summary>
    /// <param name="blend">What is in the tank.</param>
    /// <returns>Its atoms.</returns>
    public static ExhaustFuel Of(FuelBlend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return new ExhaustFuel(blend.HydrogenToCarbon, blend.OxygenToCarbon);
    }

    /// <summary>Moles of water for the fuel holding one mole of carbon, of its hydrogen that leaves as water or as hydrogen.</summary>
    /// <param name="monoxideToDioxide">[CO]/[CO2], 1; not below zero.</param>
    /// <param name="waterGas">Water-gas constant, 1.</param>
    /// <returns>1.</returns>
    internal double Water(double monoxideToDioxide, double waterGas) =>
        HydrogenToCarbon / 2 * waterGas / (waterGas + monoxideToDioxide); // exhaust (4)
}
