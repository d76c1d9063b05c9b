using Tickover.Physics.Fuels;

namespace Tickover.Physics.Flow;

/// <summary>Fuel through a jet whose coefficient depends on the Reynolds number.</summary>
public static class JetFlow
{
    private const int MaximumIterations = 60;
    private const double ReynoldsTolerance = 1e-13; // relative; a few units in the last place

    /// <summary>Flow under a pressure drop.</summary>
    /// <param name="diameterMetres">Bore, m; not negative. A bore of zero passes nothing.</param>
    /// <param name="lengthRatio">Length of the bore over its diameter, 1; stated range 2 to 10.</param>
    /// <param name="pressureDropPascals">Pressure drop, Pa; negative drives the fuel back.</param>
    /// <param name="fuel">Density and viscosity.</param>
    /// <returns>The flow; antisymmetric in the drop, rising with it, of finite slope at zero.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not finite or out of its range.</exception>
    public static JetPoint At(double diameterMetres, double lengthRatio, double pressureDropPascals, FuelProperties fuel)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        var diameter = Precondition.NotNegative(diameterMetres);
        var l = Precondition.Within(lengthRatio, 0, JetDischarge.LongestLengthRatio);
        var drop = Precondition.Finite(pressureDropPascals);
        var rho = Precondition.Positive(fuel.DensityKilogramsPerCubicMetre);
        var mu = Precondition.Positive(fuel.ViscosityPascalSeconds);

        var ideal = diameter * Math.Sqrt(2 * rho * Math.Abs(drop)) / mu; // flow (20)
        var (reynolds, iterations) = RealReynolds(ideal, l);
        var massFlow = Math.PI / 4 * diameter * mu * reynolds; // flow (21)

        return new JetPoint
        {
            MassFlowKilogramsPerSecond = Math.CopySign(massFlow, drop),
            Reynolds = reynolds,
            DischargeCoefficient = ideal > 0 ? reynolds / ideal : 0,
            Validity = ValidityAt(reynolds, l),
            Iterations = iterations,
            Residual = ideal > 0 ? Math.Abs(JetDischarge.IdealReynolds(reynolds, l) / ideal - 1) : 0,
        };
    }

    /// <summary>Pressure drop that a flow needs, Pa; negative for a negative flow.</summary>
    /// <param name="diameterMetres">Bore, m; above zero.</param>
    /// <param name="lengthRatio">Length of the bore over its diameter, 1.</param>
    /// <param name="massFlowKilogramsPerSecond">Mass flow, kg/s.</param>
    /// <param name="fuel">Density and viscosity.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not finite or out of its range.</exception>
    public static double PressureDrop(double diameterMetres, double lengthRatio, double massFlowKilogramsPerSecond, FuelProperties fuel)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        var diameter = Precondition.Positive(diameterMetres);
        var flow = Precondition.Finite(massFlowKilogramsPerSecond);
        var mu = Precondition.Positive(fuel.ViscosityPascalSeconds);
        var reynolds = Math.Abs(flow) / (Math.PI / 4 * diameter * mu); // flow (21) inverted
        var speed = mu * JetDischarge.IdealReynolds(reynolds, lengthRatio) / diameter; // times density
        return Math.CopySign(speed * speed / (2 * Precondition.Positive(fuel.DensityKilogramsPerCubicMetre)), flow); // flow (20) inverted
    }

    /// <summary>Whether a jet runs in the range of its formula.</summary>
    /// <param name="reynolds">Reynolds number of the mean speed in the bore, 1.</param>
    /// <param name="lengthRatio">Length of the bore over its diameter, 1.</param>
    /// <returns>Inside; extrapolated for Reynolds numbers below the switch of laws or above 20 000 and for bores 1 to 15 diameters long; else outside.</returns>
    public static Validity ValidityAt(double reynolds, double lengthRatio) =>
        Validity.Of("jet Reynolds number, 1", reynolds, (JetDischarge.LaminarBelowReynolds, 2e4), (0, 1e5))
            .And(Validity.Of("jet length over bore, 1", lengthRatio, (2, 10), (1, 15)));

    // B (1/Cd - peak) is linear in Re but for the small peak term, so that repeated substitution gains some two digits a step,
    // and the root lies between the answers without that term and with its largest value.
    private static (double Reynolds, int Iterations) RealReynolds(double ideal, double l)
    {
        if (ideal <= JetDischarge.IdealReynolds(JetDischarge.LaminarBelowReynolds, l))
        {
            return (JetDischarge.LaminarReynolds(ideal, l), 0);
        }

        var aboveFriction = ideal - JetDischarge.FrictionTerm(l);
        var reynolds = aboveFriction * JetDischarge.Ultimate(l);
        for (var iteration = 1; iteration <= MaximumIterations; iteration++)
        {
            var next = aboveFriction / (1 / JetDischarge.Ultimate(l) - JetDischarge.PeakTerm(reynolds, l)); // flow (22)
            if (Math.Abs(next - reynolds) <= ReynoldsTolerance * next)
            {
                return (next, iteration);
            }

            reynolds = next;
        }

        return (reynolds, MaximumIterations);
    }
}
