namespace Tickover.Physics.Exhaust;

/// <summary>λ from four gases by the balance of carbon and oxygen.</summary>
/// <remarks>
/// J. Brettschneider, Bosch Technische Berichte 6 (1979), the formula of OIML R 99, ISO 3930 and UN Regulation 83. It believes the sample: air from a
/// leak counts as the engine's.
/// </remarks>
public static class LambdaFormula
{
    private static readonly (double Minimum, double Maximum) Usable = (0.6, 3);

    /// <summary>λ of a sample.</summary>
    /// <param name="sample">The four gases, and nitric oxide where it was measured.</param>
    /// <param name="fuel">Fuel constants; <see cref="ExhaustFuel.Regulation"/> is what analysers take.</param>
    /// <param name="carbonPerHydrocarbon">Carbon atoms counted for one molecule of hexane, 1.</param>
    /// <returns>λ and its validity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sample holds no CO2 or a value that is not finite.</exception>
    public static ExhaustLambda Of(ExhaustSample sample, ExhaustFuel fuel, double carbonPerHydrocarbon = ExhaustConstants.HexaneCarbon)
    {
        ArgumentNullException.ThrowIfNull(sample);
        ArgumentNullException.ThrowIfNull(fuel);
        sample.Checked();

        var water = fuel.Water(sample.MonoxideToDioxide, ExhaustConstants.WaterGas);
        var oxygen = sample.CarbonDioxide + sample.CarbonMonoxide / 2 + sample.Oxygen + sample.NitricOxide / 2
            + (water / 2 - fuel.OxygenToCarbon / 2) * sample.BurntCarbon;
        var lambda = oxygen / (fuel.OxygenDemand * sample.Carbon(carbonPerHydrocarbon)); // exhaust (8)
        return new ExhaustLambda(lambda, Validity.Of("λ", lambda, WaterGasEquilibrium.Stated, Usable));
    }
}
