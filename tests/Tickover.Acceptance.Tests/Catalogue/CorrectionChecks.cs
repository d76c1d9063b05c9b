using Tickover.Physics.Air;
using Tickover.Physics.Flow;
using Tickover.Physics.Fuels;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>What height, heat and ethanol do to a fixed jet: the trade's round figures against the models.</summary>
public static class CorrectionChecks
{
    private const string Round = "Square root of density and the fuel's need, worked out independently, rounded as the trade says it";
    private const double RoundedToOneDigit = 0.07;
    private const double ThousandFeetMetres = 304.8;
    private const double Percent = 100;

    public static CheckGroup Group { get; } = new("Corrections for height, heat and fuel",
    [
        Check("1,000 ft up, same jets", "richer by", 1.5, () => (1 / Ratio(ThousandFeetMetres) - 1) * Percent),
        Check("1,000 m up, same jets", "richer by", 5, () => (1 / Ratio(1000) - 1) * Percent),
        Check("1,000 ft up, same mixture", "smaller jet diameter by", 0.7, () => (1 - Math.Sqrt(Ratio(ThousandFeetMetres))) * Percent),
        Check("10 K warmer, same jets", "richer by", 1.7, () => (1 / OfHeat(298.15, 288.15) - 1) * Percent),
        Check("0 °C instead of 20 °C, same jets", "leaner by", 3.5, () => (OfHeat(273.15, 293.15) - 1) * Percent),
        Check("E5 instead of E0, same jets", "leaner by", 2, () => (Leaner(5) - 1) * Percent),
        Check("E10 instead of E0, same jets", "leaner by", 4, () => (Leaner(10) - 1) * Percent),
        Check("E10 instead of E0, same mixture", "larger jet diameter by", 2, () => (Math.Sqrt(Leaner(10)) - 1) * Percent),
    ]);

    private static OutsideCheck Check(string subject, string quantity, double published, Func<double> ours) => new()
    {
        Subject = subject,
        Quantity = quantity,
        Unit = "%",
        Published = published,
        Ours = ours,
        Source = Round,
        Kind = SourceKind.Derived,
        Tolerance = RoundedToOneDigit,
    };

    private static double Ratio(double metres) => ElementaryCarburettor.AtOtherDensity(
        1, StandardAtmosphere.At(0).DensityKilogramsPerCubicMetre, StandardAtmosphere.At(metres).DensityKilogramsPerCubicMetre);

    private static double OfHeat(double kelvin, double set) => ElementaryCarburettor.AtOtherDensity(1, 1, set / kelvin);

    // λ goes with what the fuel needs; the jet's mass flow with the root of the fuel's density.
    private static double Leaner(double ethanol)
    {
        var (plain, blended) = (FuelGrade.Ethanol(0).At(FuelBlend.ReferenceKelvin), FuelGrade.Ethanol(ethanol).At(FuelBlend.ReferenceKelvin));
        return plain.StoichiometricRatio / blended.StoichiometricRatio
            * Math.Sqrt(plain.DensityKilogramsPerCubicMetre / blended.DensityKilogramsPerCubicMetre);
    }
}
