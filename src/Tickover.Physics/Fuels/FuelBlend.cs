namespace Tickover.Physics.Fuels;

/// <summary>A fuel blended by volume from its components, with ideal mixing.</summary>
/// <remarks>
/// Volumes add (petrol and ethanol really swell by up to 0.2 %), logarithms of viscosity mix by volume. Both are usual assumptions, not measurements.
/// </remarks>
public sealed class FuelBlend
{
    /// <summary>Temperature at which the volumes are measured, K: 20 °C.</summary>
    public const double ReferenceKelvin = 293.15;

    private const double FractionTolerance = 1e-9; // rounding of a sum of a few decimal fractions

    private readonly (FuelComponent Component, double VolumeFraction, double MassFraction)[] _parts;

    /// <summary>Blends components by volume.</summary>
    /// <param name="parts">The components; fractions 0 to 1 that add up to one.</param>
    /// <exception cref="ArgumentException">No parts, a fraction out of range, or fractions that do not add up to one.</exception>
    public FuelBlend(IReadOnlyList<FuelPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var sum = parts.Sum(part => Precondition.Within(part.VolumeFraction, 0, 1, nameof(parts)));
        if (Math.Abs(sum - 1) > FractionTolerance)
        {
            throw new ArgumentException("The volume fractions of a blend must add up to one.", nameof(parts));
        }

        var mass = parts.Sum(MassOf);
        _parts = [.. parts.Select(part => (part.Component, part.VolumeFraction, MassOf(part) / mass))]; // fuels (6)
        Parts = [.. parts];
    }

    /// <summary>The components and their volume fractions.</summary>
    public IReadOnlyList<FuelPart> Parts { get; }

    /// <summary>Stoichiometric mass of dry air to mass of fuel, 1.</summary>
    public double StoichiometricRatio => _parts.Sum(part => part.MassFraction * part.Component.StoichiometricRatio); // fuels (7)

    /// <summary>Atoms of hydrogen for each atom of carbon, 1.</summary>
    public double HydrogenToCarbon => AtomsPerMass(component => component.Hydrogen) / AtomsPerMass(component => component.Carbon); // fuels (8)

    /// <summary>Atoms of oxygen for each atom of carbon, 1.</summary>
    public double OxygenToCarbon => AtomsPerMass(component => component.Oxygen) / AtomsPerMass(component => component.Carbon); // fuels (8)

    /// <summary>The blend at a temperature.</summary>
    /// <param name="temperatureKelvin">Temperature of the fuel at the jet, K; usable 233 to 373.</param>
    /// <returns>Density, viscosity and stoichiometric ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not above zero.</exception>
    public FuelProperties At(double temperatureKelvin)
    {
        var t = Precondition.Positive(temperatureKelvin);
        return new FuelProperties
        {
            DensityKilogramsPerCubicMetre = 1 / _parts.Sum(part => part.MassFraction / part.Component.Density.At(t)), // fuels (9)
            ViscosityPascalSeconds = Math.Exp(_parts.Sum(part => part.VolumeFraction * part.Component.Viscosity.LogarithmAt(t))), // fuels (10)
            StoichiometricRatio = StoichiometricRatio,
        };
    }

    /// <summary>Whether a temperature lies in the ranges of the components' figures.</summary>
    /// <param name="temperatureKelvin">Temperature of the fuel, K.</param>
    /// <returns>Inside, or outside with the range of the component that ends first.</returns>
    public Validity ValidityAt(double temperatureKelvin) =>
        _parts.Where(part => part.VolumeFraction > 0).Aggregate(Validity.Inside, (verdict, part) => verdict
            .And(Validity.Of("fuel temperature, K", temperatureKelvin, (part.Component.Density.MinimumKelvin, part.Component.Density.MaximumKelvin)))
            .And(Validity.Of("fuel temperature, K", temperatureKelvin, (part.Component.Viscosity.MinimumKelvin, part.Component.Viscosity.MaximumKelvin))));

    private static double MassOf(FuelPart part) => part.VolumeFraction * part.Component.Density.At(ReferenceKelvin);

    private double AtomsPerMass(Func<FuelComponent, double> atoms) =>
        _parts.Sum(part => part.MassFraction * atoms(part.Component) / part.Component.MolarMass);
}
