namespace Tickover.Physics.Breathing;

/// <summary>Constants of the two gases of the gas exchange: fresh charge and burnt gas.</summary>
/// <remarks>
/// Both have the gas constant of the ambient air; specific heats are constant, energies count from
/// <see cref="ReferenceTemperatureKelvin"/>. See docs/physics/breathing.md, equations (1) to (3).
/// </remarks>
public static class GasModel
{
    /// <summary>Ratio of specific heats of the fresh charge, 1. Dry air at 300 K: 1.400.</summary>
    public const double FreshGamma = 1.40;

    /// <summary>Ratio of specific heats of burnt gas between 800 and 2200 K, 1. From memory: 1.25 to 1.31 at λ 0.9.</summary>
    public const double BurntGamma = 1.28;

    /// <summary>Temperature from which internal energies count, K.</summary>
    public const double ReferenceTemperatureKelvin = 298.15;

    /// <summary>Pressure-ratio window, 1, inside which flow turns from square root to linear, so that it can reverse.</summary>
    /// <remarks>
    /// 1e-3 is 100 Pa at one bar. Against a tenth of it, at half a degree a step, the air of 384 points differs by 0.077 % at
    /// most with one barrel on a cylinder and by 0.100 % (two points just above) on a shared volume. With less, flow through
    /// an open valve rings at the step's own pace and more points fail to settle.
    /// </remarks>
    public const double RegularisationRatio = 1e-3;

    /// <summary>Specific heat at constant volume of the fresh charge, J/(kg K).</summary>
    /// <param name="gasConstant">Gas constant, J/(kg K).</param>
    /// <returns>cv, J/(kg K).</returns>
    public static double FreshHeat(double gasConstant) => gasConstant / (FreshGamma - 1);

    /// <summary>Specific heat at constant volume of burnt gas, J/(kg K).</summary>
    /// <param name="gasConstant">Gas constant, J/(kg K).</param>
    /// <returns>cv, J/(kg K).</returns>
    public static double BurntHeat(double gasConstant) => gasConstant / (BurntGamma - 1);
}
