using Tickover.Physics.Air;

namespace Tickover.Physics.Supply;

/// <summary>Vapour pressure of petrol, what ethanol does to it, and the indices of vapour lock.</summary>
/// <remarks>
/// True vapour pressure: U.S. EPA AP-42 ch. 7.1 (API MPMS 19), fitted to 40 to 100 °F. Fresh fuel as sold; a tank that has stood open for
/// a season has lost its light ends and boils later. The dry vapour pressure equivalent of EN 13016-1 is put in for Reid's: they differ by
/// one or two per cent, less than two tankers do.
/// </remarks>
public static class FuelVapour
{
    /// <summary>Slope in per cent of the distillation curve at a tenth evaporated, °F for each per cent: motor petrol, 1.</summary>
    public const double MotorPetrolSlope = 3;

    /// <summary>Vapour lock index above which EN 228 sees trouble between its seasons, 1.</summary>
    public const double TransitionIndexLimit = 1150;

    private const double PascalsPerPsi = 6894.757293168;
    private const double RankinePerKelvin = 1.8;

    // Rise of the vapour pressure at 37.8 °C with ethanol in petrol of 60 kPa, kPa over per cent by volume. 10 % about 1 psi, flat from 5 to 15 %
    // (R. L. McCormick, NREL, 2012); the rest, and the fall beyond 50 %, from memory.
    private static readonly (double Percent, double Kilopascals)[] EthanolRise =
        [(0, 0), (2, 4.5), (5, 6.6), (10, 6.9), (15, 6.5), (20, 5.9), (30, 4.5), (50, 1), (85, -22), (100, -44)];

    /// <summary>True vapour pressure, Pa absolute.</summary>
    /// <param name="reidPascals">Vapour pressure of the blend at 37.8 °C by Reid, Pa; 14 to 104 kPa stated.</param>
    /// <param name="temperatureKelvin">Temperature, K; 277 to 311 stated, usable 233 to 373.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure not above zero.</exception>
    public static double TruePressure(double reidPascals, double temperatureKelvin)
    {
        var logarithm = Math.Log(Precondition.Positive(reidPascals) / PascalsPerPsi);
        var s = Math.Sqrt(MotorPetrolSlope);
        var a = 15.64 - 1.854 * s - (0.8742 - 0.3280 * s) * logarithm;
        var b = 8742 - 1042 * s - (1049 - 179.4 * s) * logarithm;
        return PascalsPerPsi * Math.Exp(a - b / (RankinePerKelvin * Precondition.Positive(temperatureKelvin))); // supply (18)
    }

    /// <summary>Temperature at which it boils under a pressure, K.</summary>
    /// <param name="reidPascals">Vapour pressure of the blend at 37.8 °C by Reid, Pa; above zero.</param>
    /// <param name="absolutePascals">Absolute pressure, Pa; above zero.</param>
    /// <returns>K.</returns>
    public static double BoilingKelvin(double reidPascals, double absolutePascals)
    {
        var logarithm = Math.Log(Precondition.Positive(reidPascals) / PascalsPerPsi);
        var s = Math.Sqrt(MotorPetrolSlope);
        var a = 15.64 - 1.854 * s - (0.8742 - 0.3280 * s) * logarithm;
        var b = 8742 - 1042 * s - (1049 - 179.4 * s) * logarithm;
        return b / (a - Math.Log(Precondition.Positive(absolutePascals) / PascalsPerPsi)) / RankinePerKelvin; // supply (18) inverted
    }

    /// <summary>Whether a vapour pressure and a temperature lie where the correlation was fitted.</summary>
    /// <param name="reidPascals">Vapour pressure at 37.8 °C, Pa.</param>
    /// <param name="temperatureKelvin">Temperature, K.</param>
    /// <returns>Inside, extrapolated or outside.</returns>
    public static Validity ValidityAt(double reidPascals, double temperatureKelvin) =>
        Validity.Of("vapour pressure at 37.8 °C, Pa", reidPascals, (14_000, 104_000), (7_000, 140_000))
            .And(Validity.Of("fuel temperature, K", temperatureKelvin, (277, 311), (233, 373)));

    /// <summary>Vapour pressure of petrol with ethanol splashed into it, Pa at 37.8 °C.</summary>
    /// <param name="petrolPascals">Vapour pressure of the petrol alone at 37.8 °C, Pa; above zero.</param>
    /// <param name="ethanolFraction">Ethanol by volume, 1; 0 to 1.</param>
    /// <returns>Pa; rough beyond 15 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure out of range.</exception>
    public static double WithEthanol(double petrolPascals, double ethanolFraction)
    {
        var percent = 100 * Precondition.Within(ethanolFraction, 0, 1);
        var upper = 1;
        while (upper < EthanolRise.Length - 1 && EthanolRise[upper].Percent < percent)
        {
            upper++;
        }

        var (low, high) = (EthanolRise[upper - 1], EthanolRise[upper]);
        var share = (percent - low.Percent) / (high.Percent - low.Percent);
        return Precondition.Positive(petrolPascals) + 1000 * (low.Kilopascals + share * (high.Kilopascals - low.Kilopascals)); // supply (19)
    }

    /// <summary>Dry vapour pressure equivalent, Pa, from the air-saturated pressure a tester reads.</summary>
    /// <param name="airSaturatedPascals">Total pressure at 37.8 °C, Pa.</param>
    /// <returns>Pa, by EN 13016-1.</returns>
    public static double DryEquivalent(double airSaturatedPascals) => 0.965 * airSaturatedPascals - 3780; // supply (20)

    /// <summary>Head left at an inlet above the fuel's vapour pressure, m of fuel (net positive suction head available).</summary>
    /// <param name="absolutePascals">Absolute pressure at the inlet, Pa.</param>
    /// <param name="vapourPascals">True vapour pressure there, Pa.</param>
    /// <param name="density">Density, kg/m³; above zero.</param>
    /// <returns>m; negative where it boils.</returns>
    public static double SuctionHead(double absolutePascals, double vapourPascals, double density) =>
        (absolutePascals - vapourPascals) / (Precondition.Positive(density) * AirConstants.StandardGravityMetresPerSecondSquared); // supply (21)

    /// <summary>Vapour lock index of EN 228.</summary>
    /// <param name="dryEquivalentPascals">Dry vapour pressure equivalent, Pa.</param>
    /// <param name="evaporatedAt70Fraction">Part evaporated at 70 °C, 1.</param>
    /// <returns>1; made of kPa and per cent.</returns>
    public static double LockIndex(double dryEquivalentPascals, double evaporatedAt70Fraction) =>
        10 * dryEquivalentPascals / 1000 + 7 * 100 * evaporatedAt70Fraction; // supply (22)

    /// <summary>Temperature at which one volume of fuel stands under twenty of vapour, K, for petrol without much alcohol.</summary>
    /// <param name="dryEquivalentPascals">Dry vapour pressure equivalent, Pa.</param>
    /// <param name="tenEvaporatedKelvin">Temperature of a tenth evaporated, K.</param>
    /// <param name="halfEvaporatedKelvin">Temperature of half evaporated, K.</param>
    /// <returns>K; ASTM D4814, appendix, from memory.</returns>
    public static double TwentyToOneKelvin(double dryEquivalentPascals, double tenEvaporatedKelvin, double halfEvaporatedKelvin)
    {
        var (t10, t50) = (tenEvaporatedKelvin - AirConstants.IcePointKelvin, halfEvaporatedKelvin - AirConstants.IcePointKelvin);
        return AirConstants.IcePointKelvin + 52.47 - 0.33 * dryEquivalentPascals / 1000 + 0.20 * t10 + 0.17 * t50; // supply (23)
    }
}
