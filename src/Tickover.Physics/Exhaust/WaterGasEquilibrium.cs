namespace Tickover.Physics.Exhaust;

/// <summary>Composition of the exhaust from λ: the water-gas equilibrium shares out the oxygen of a rich mixture.</summary>
public static class WaterGasEquilibrium
{
    /// <summary>Richest and leanest mixture for which it is stated, λ.</summary>
    public static readonly (double Minimum, double Maximum) Stated = (0.7, 1.6);

    private static readonly (double Minimum, double Maximum) Usable = (0.6, 10);

    /// <summary>The exhaust of a mixture.</summary>
    /// <param name="lambda">Air over what the fuel needs, 1; 0.6 to 10. Richer, soot forms and the balance ends.</param>
    /// <param name="fuel">The fuel.</param>
    /// <param name="waterGas">Water-gas constant, 1; above zero.</param>
    /// <returns>Dry fractions, water, validity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">λ or the constant is out of range.</exception>
    public static ExhaustComposition At(double lambda, ExhaustFuel fuel, double waterGas = ExhaustConstants.WaterGas)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        Precondition.Within(lambda, Usable.Minimum, Usable.Maximum);
        Precondition.Positive(waterGas);

        var hydrogen = fuel.HydrogenToCarbon / 2;
        var supplied = lambda * fuel.OxygenDemand; // exhaust (2)
        var dioxide = lambda < 1 ? Dioxide(fuel.OxygenToCarbon + 2 * supplied - 1, hydrogen, waterGas) : 1;
        var monoxide = 1 - dioxide;
        var water = lambda < 1 ? fuel.OxygenToCarbon + 2 * supplied - 1 - dioxide : hydrogen; // exhaust (3)
        var oxygen = lambda < 1 ? 0 : supplied - fuel.OxygenDemand;
        var nitrogen = ExhaustConstants.NitrogenToOxygen * supplied;
        var dry = 1 + (hydrogen - water) + oxygen + nitrogen;
        return new ExhaustComposition
        {
            CarbonMonoxide = monoxide / dry,
            CarbonDioxide = dioxide / dry,
            Hydrogen = (hydrogen - water) / dry,
            Oxygen = oxygen / dry,
            Nitrogen = nitrogen / dry,
            WetWater = water / (dry + water),
            Validity = Validity.Of("λ", lambda, Stated, Usable),
        };
    }

    /// <summary>The rich mixture whose exhaust has a given [CO]/[CO2], whatever air has got into the sample since.</summary>
    /// <remarks>Says nothing of a lean mixture: all of them have none, and real engines leave a little.</remarks>
    /// <param name="monoxideToDioxide">[CO]/[CO2], 1; not below zero.</param>
    /// <param name="fuel">The fuel.</param>
    /// <returns>λ, at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is below zero.</exception>
    public static double RichLambda(double monoxideToDioxide, ExhaustFuel fuel)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        var r = Precondition.NotNegative(monoxideToDioxide);
        var oxygen = 1 + 1 / (1 + r) + fuel.Water(r, ExhaustConstants.WaterGas) - fuel.OxygenToCarbon;
        return oxygen / (2 * fuel.OxygenDemand); // exhaust (7)
    }

    /// <summary>The root of the quadratic, in the form that also holds for a constant of one.</summary>
    private static double Dioxide(double oxygen, double hydrogen, double waterGas)
    {
        var p = waterGas * (hydrogen - oxygen) + oxygen + 1;
        return 2 * oxygen / (p + Math.Sqrt(p * p + 4 * (waterGas - 1) * oxygen)); // exhaust (5)
    }
}
