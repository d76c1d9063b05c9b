using Tickover.Physics.Fuels;
using Tickover.Physics.Inspection;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Jets by their flow: bores found again from flows worked out elsewhere, and water on the bench.</summary>
public static class FlowBenchChecks
{
    private const string Flows = "Carburation report, 1.3, coefficients of jets after Lichtarowicz, Duggins and Markland (1965), bore three diameters long; petrol 745 kg/m³, 0.50 mPa s, worked out independently";
    private const string Water = "IAPWS figures for water at 0.1 MPa (from memory)";
    private const double Gravity = 9.80665;

    public static CheckGroup Group { get; } = new("Jets on the flow bench",
    [
        Bore("1.4 mm at 5 kPa, 3.34 g/s", 3.34e-3, 5000, 1.4, 0.005),
        ByCoefficient(0.5e-3, 500, 0.6426),
        ByCoefficient(0.5e-3, 1000, 0.7142),
        ByCoefficient(1.0e-3, 2000, 0.7574),
        ByCoefficient(1.4e-3, 5000, 0.7904),
        OfWater("density at 4 °C", "kg/m³", 999.97, () => BenchWater.At(277.15).DensityKilogramsPerCubicMetre, 1e-5),
        OfWater("density at 20 °C", "kg/m³", 998.21, () => BenchWater.At(293.15).DensityKilogramsPerCubicMetre, 1e-5),
        OfWater("viscosity at 20 °C", "mPa s", 1.0016, () => 1e3 * BenchWater.At(293.15).ViscosityPascalSeconds, 0.01),
        OfWater("viscosity at 40 °C", "mPa s", 0.6527, () => 1e3 * BenchWater.At(313.15).ViscosityPascalSeconds, 0.01),
    ]);

    // the drop at which a bore has this Reynolds number by its loss-free speed, and what it passes with the table's coefficient
    private static OutsideCheck ByCoefficient(double bore, double reynolds, double coefficient)
    {
        var speed = reynolds * 0.5e-3 / (745 * bore);
        return Bore(
            FormattableString.Invariant($"{1e3 * bore:0.0} mm at Reynolds number {reynolds}, by the coefficient {coefficient}"), coefficient * Math.PI / 4 * bore * bore * 745 * speed, 0.5 * 745 * speed * speed, 1e3 * bore, 0.0005);
    }

    private static OutsideCheck Bore(string subject, double kilogramsPerSecond, double drop, double millimetres, double tolerance) => new()
    {
        Subject = subject,
        Quantity = "equivalent bore",
        Unit = "mm",
        Published = millimetres,
        Ours = () => 1e3 * FlowBench.BoreOf(
            new BenchRun { VolumeCubicMetres = kilogramsPerSecond / 745 * 60, Seconds = 60, HeadAtFirstMetres = drop / (745 * Gravity), HeadAtLastMetres = drop / (745 * Gravity) },
            _ => new FuelProperties { DensityKilogramsPerCubicMetre = 745, ViscosityPascalSeconds = 0.5e-3, StoichiometricRatio = 14.7 }, 293.15, 3, new BenchDeviations()).DiameterMetres,
        Source = Flows,
        Kind = SourceKind.Derived,
        Tolerance = tolerance,
    };

    private static OutsideCheck OfWater(string quantity, string unit, double published, Func<double> ours, double tolerance) => new()
    {
        Subject = "water",
        Quantity = quantity,
        Unit = unit,
        Published = published,
        Ours = ours,
        Source = Water,
        Kind = SourceKind.FromMemory,
        Tolerance = tolerance,
    };
}
