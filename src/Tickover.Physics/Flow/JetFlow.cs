using Tickover.Physics.Fuels;

namespace Tickover.Physics.Flow;

/// <summary>Fuel through a jet whose coefficient depends on the Reynolds number.</summary>
/// <remarks>As the drop goes to zero the flow becomes proportional to it, so the law needs no smoothing.</remarks>
public static class JetFlow
{
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
        var drop = Precondition.Finite(pressureDropPascals);
        var rho = Precondition.Positive(fuel.DensityKilogramsPerCubicMetre);
        var mu = Precondition.Positive(fuel.ViscosityPascalSeconds);

        var ideal = diameter * Math.Sqrt(2 * rho * Math.Abs(drop)) / mu; // flow (20)
        var cd = JetDischarge.Coefficient(ideal, lengthRatio);
        var massFlow = Math.PI / 4 * diameter * mu * cd * ideal; // flow (21)

        return new JetPoint
        {
            MassFlowKilogramsPerSecond = Math.CopySign(massFlow, drop),
            IdealReynolds = ideal,
            DischargeCoefficient = cd,
            Validity = ValidityAt(ideal, lengthRatio),
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
        var reynolds = Math.Abs(flow) / (Math.PI / 4 * diameter * mu); // flow (22)
        var speed = mu * JetDischarge.IdealReynolds(reynolds, lengthRatio) / diameter; // times density
        return Math.CopySign(speed * speed / (2 * Precondition.Positive(fuel.DensityKilogramsPerCubicMetre)), flow); // flow (20) inverted
    }

    /// <summary>Whether a jet runs in the range of its formula.</summary>
    /// <param name="idealReynolds">Reynolds number of the loss-free speed, 1.</param>
    /// <param name="lengthRatio">Length of the bore over its diameter, 1.</param>
    /// <returns>Inside; extrapolated for slower flow, Reynolds numbers to 100 000 and bores 1.5 to 15 diameters long; else outside.</returns>
    public static Validity ValidityAt(double idealReynolds, double lengthRatio) =>
        Validity.Of("jet Reynolds number, 1", idealReynolds, (10, 2e4), (0, 1e5))
            .And(Validity.Of("jet length over bore, 1", lengthRatio, (2, 10), (1.5, 15)));
}
