using Tickover.Physics.Flow;
using Tickover.Physics.Fuels;

namespace Tickover.Physics.Inspection;

/// <summary>A jet known by its flow: the equivalent bore from volume, time, head and liquid, docs/physics/inspection.md.</summary>
public static class FlowBench
{
    private const double Gravity = 9.80665;
    private const double Smallest = 1e-5;
    private const double Largest = 2e-2;
    private const double Fine = 1e-13;

    /// <summary>The equivalent bore.</summary>
    /// <param name="run">What was read.</param>
    /// <param name="liquid">Density and viscosity at a temperature, K.</param>
    /// <param name="kelvin">Temperature of the liquid, K.</param>
    /// <param name="lengthRatio">Length of the bore over its diameter, 1; 2 to 10 as the formula states.</param>
    /// <param name="deviations">What the readings are good to.</param>
    /// <returns>The bore with its deviation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A reading is not above zero, or no bore from 0.01 to 20 mm passes this flow.</exception>
    public static JetBore BoreOf(BenchRun run, Func<double, FuelProperties> liquid, double kelvin, double lengthRatio, BenchDeviations deviations)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(liquid);
        ArgumentNullException.ThrowIfNull(deviations);
        double Bore(double volume, double seconds, double head, double temperature, double ratio) => Solve(
            run with { VolumeCubicMetres = run.VolumeCubicMetres * volume, Seconds = run.Seconds + seconds, HeadAtFirstMetres = run.HeadAtFirstMetres + head, HeadAtLastMetres = run.HeadAtLastMetres + head }, liquid(kelvin + temperature), ratio);

        var bore = Bore(1, 0, 0, 0, lengthRatio);
        var own = Square(Bore(1 + deviations.VolumePart, 0, 0, 0, lengthRatio) - bore) + Square(Bore(1, Math.Min(deviations.Seconds, run.Seconds), 0, 0, lengthRatio) - bore); // inspection (5)
        var shared = Square(Bore(1, 0, deviations.HeadMetres, 0, lengthRatio) - bore) + Square(Bore(1, 0, 0, deviations.Kelvin, lengthRatio) - bore)
            + Square(Bore(1, 0, 0, 0, lengthRatio + deviations.LengthRatio) - bore) + Square(bore * deviations.DischargePart / 2);
        var drop = liquid(kelvin).DensityKilogramsPerCubicMetre * Gravity * run.MeanHeadMetres;
        var point = JetFlow.At(bore, lengthRatio, drop, liquid(kelvin));
        return new JetBore(bore, Math.Sqrt(own + shared), Math.Sqrt(own), point.DischargeCoefficient, point.Validity);
    }

    /// <summary>Volume flow of a bore under a held head, m³/s: what a jet numbered by flow should pass.</summary>
    /// <param name="diameterMetres">Bore, m.</param>
    /// <param name="lengthRatio">Length of the bore over its diameter, 1.</param>
    /// <param name="headMetres">Head, m.</param>
    /// <param name="liquid">Density and viscosity.</param>
    /// <returns>m³/s.</returns>
    public static double FlowOf(double diameterMetres, double lengthRatio, double headMetres, FuelProperties liquid)
    {
        ArgumentNullException.ThrowIfNull(liquid);
        var rho = liquid.DensityKilogramsPerCubicMetre;
        return JetFlow.At(diameterMetres, lengthRatio, rho * Gravity * headMetres, liquid).MassFlowKilogramsPerSecond / rho; // inspection (3)
    }

    // the flow rises with the bore, so halving finds the one that passes it
    private static double Solve(BenchRun run, FuelProperties liquid, double lengthRatio)
    {
        var (wanted, head) = (run.FlowCubicMetresPerSecond, run.MeanHeadMetres);
        var (low, high) = (Smallest, Largest);
        if (!(FlowOf(low, lengthRatio, head, liquid) <= wanted && FlowOf(high, lengthRatio, head, liquid) >= wanted))
        {
            throw new ArgumentOutOfRangeException(nameof(run), wanted, "No bore from 0.01 to 20 mm passes this flow under this head.");
        }

        while (high - low > Fine)
        {
            var middle = (low + high) / 2;
            (low, high) = FlowOf(middle, lengthRatio, head, liquid) < wanted ? (middle, high) : (low, middle); // inspection (4)
        }

        return (low + high) / 2;
    }

    private static double Square(double value) => value * value;
}
