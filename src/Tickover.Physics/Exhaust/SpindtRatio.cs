namespace Tickover.Physics.Exhaust;

/// <summary>Air to fuel by mass from four gases, by another balance than <see cref="LambdaFormula"/>: a cross-check.</summary>
/// <remarks>
/// R. S. Spindt, SAE 650507 (1965), for fuels without oxygen; its air and atoms are its own, so compare it as λ, against
/// <see cref="Stoichiometric"/>. For blends with oxygen it reads a little lean: 0.3 % with E5.
/// </remarks>
public static class SpindtRatio
{
    private const double CarbonMass = 12.01;
    private const double HydrogenMass = 1.008;
    private const double CarbonFactor = 11.492;
    private const double HydrogenFactor = 120;
    private const double WaterGas = 3.5;

    /// <summary>Air to fuel by mass.</summary>
    /// <param name="sample">The four gases.</param>
    /// <param name="fuel">The fuel; its oxygen is left out.</param>
    /// <returns>1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sample holds no CO2 or a value that is not finite.</exception>
    public static double Of(ExhaustSample sample, ExhaustFuel fuel)
    {
        ArgumentNullException.ThrowIfNull(sample);
        ArgumentNullException.ThrowIfNull(fuel);
        sample.Checked();
        var burnt = sample.BurntCarbon / sample.Carbon();
        return burnt * Balance(fuel, sample.MonoxideToDioxide, sample.Oxygen / sample.CarbonDioxide); // exhaust (9)
    }

    /// <summary>What it gives for complete burning without a rest of oxygen.</summary>
    /// <param name="fuel">The fuel.</param>
    /// <returns>1.</returns>
    public static double Stoichiometric(ExhaustFuel fuel)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        return Balance(fuel, 0, 0);
    }

    private static double Balance(ExhaustFuel fuel, double monoxide, double oxygen)
    {
        var carbon = CarbonMass / (CarbonMass + HydrogenMass * fuel.HydrogenToCarbon);
        return CarbonFactor * carbon * (1 + monoxide / 2 + oxygen) / (1 + monoxide) + HydrogenFactor * (1 - carbon) / (WaterGas + monoxide);
    }
}
