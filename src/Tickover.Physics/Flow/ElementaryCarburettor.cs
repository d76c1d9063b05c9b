using Tickover.Physics.Air;

namespace Tickover.Physics.Flow;

/// <summary>The carburettor of the textbooks: one choke, one plain jet, a nozzle lip above the fuel.</summary>
/// <remarks>
/// R. K. Rajput, 2007, ch. 11; H. N. Gupta, 2006, ch. 9; J. B. Heywood, 1988, eq. 7.4 to 7.6 (from memory).
/// It leaves out auxiliary venturi, air corrector and pulsation, and is lean by a factor of about two against a real one: a yardstick, not a forecast.
/// </remarks>
public sealed record ElementaryCarburettor
{
    /// <summary>Choke throat diameter, m; above zero.</summary>
    public required double ChokeDiameterMetres { get; init; }

    /// <summary>Discharge coefficient of the choke, 1.</summary>
    public required double ChokeCoefficient { get; init; }

    /// <summary>Jet diameter, m; above zero.</summary>
    public required double JetDiameterMetres { get; init; }

    /// <summary>Discharge coefficient of the jet, 1.</summary>
    public required double JetCoefficient { get; init; }

    /// <summary>Height of the nozzle's lip above the fuel, m; textbook 0.0028 to 0.008.</summary>
    public double LipHeightMetres { get; init; }

    /// <summary>Density of the air before the choke, kg/m³.</summary>
    public required double AirDensity { get; init; }

    /// <summary>Density of the fuel, kg/m³.</summary>
    public required double FuelDensity { get; init; }

    /// <summary>Free-fall acceleration, m/s²; textbooks take 9.81.</summary>
    public double Gravity { get; init; } = AirConstants.StandardGravityMetresPerSecondSquared;

    /// <summary>Pressure of the fuel column up to the lip, Pa.</summary>
    public double LipPressurePascals => FuelDensity * Gravity * LipHeightMetres;

    /// <summary>Throat speed at which fuel first reaches the lip, m/s.</summary>
    public double StartOfFlowSpeed => Math.Sqrt(2 * LipPressurePascals / AirDensity); // flow (28)

    /// <summary>Air to fuel by mass with air taken as incompressible, 1.</summary>
    /// <param name="depressionPascals">Throat depression, Pa.</param>
    /// <returns>1; infinite where no fuel reaches the lip.</returns>
    public double AirFuelRatio(double depressionPascals) => RatioWithoutLip * LipFactor(depressionPascals); // flow (29)

    /// <summary>Air to fuel by mass with compressible air, 1.</summary>
    /// <param name="depressionPascals">Throat depression, Pa.</param>
    /// <param name="upstreamPressurePascals">Absolute pressure before the choke, Pa; above zero.</param>
    /// <returns>1; infinite where no fuel reaches the lip.</returns>
    public double AirFuelRatio(double depressionPascals, double upstreamPressurePascals) =>
        AirFuelRatio(depressionPascals) * IsentropicFlow.Phi(1 - depressionPascals / upstreamPressurePascals, AirConstants.SpecificHeatRatio); // flow (29)

    /// <summary>How much leaner the lip makes the mixture, 1.</summary>
    /// <param name="depressionPascals">Throat depression, Pa.</param>
    /// <returns>1; infinite where no fuel reaches the lip.</returns>
    public double LipFactor(double depressionPascals) =>
        depressionPascals > LipPressurePascals
            ? Math.Sqrt(depressionPascals / (depressionPascals - LipPressurePascals))
            : double.PositiveInfinity;

    /// <summary>Ratio at another air density, same volume flow and same jet, 1.</summary>
    /// <param name="airFuelRatio">Ratio at the first density, 1.</param>
    /// <param name="density">First density, kg/m³; above zero.</param>
    /// <param name="otherDensity">Other density, kg/m³; not negative.</param>
    /// <returns>1; richer in thinner air.</returns>
    public static double AtOtherDensity(double airFuelRatio, double density, double otherDensity) =>
        airFuelRatio * Math.Sqrt(otherDensity / density); // flow (30)

    /// <summary>Ratio with a filter whose drop the float chamber does not feel, 1.</summary>
    /// <param name="airFuelRatio">Ratio without the filter's drop, 1.</param>
    /// <param name="depressionPascals">Throat depression below the air before the choke, Pa; above zero.</param>
    /// <param name="filterDropPascals">Pressure drop of the filter, Pa; not negative.</param>
    /// <returns>1; richer, since the chamber is vented outside. Vented inside, nothing changes.</returns>
    public static double WithOutsideVent(double airFuelRatio, double depressionPascals, double filterDropPascals) =>
        airFuelRatio * Math.Sqrt(depressionPascals / (depressionPascals + filterDropPascals)); // flow (31)

    private double RatioWithoutLip =>
        ChokeCoefficient / JetCoefficient * Circle.Area(ChokeDiameterMetres) / Circle.Area(JetDiameterMetres) * Math.Sqrt(AirDensity / FuelDensity);
}
