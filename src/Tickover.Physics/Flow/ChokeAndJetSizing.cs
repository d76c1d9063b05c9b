namespace Tickover.Physics.Flow;

/// <summary>Choke and plain main jet for an engine, as the textbooks size them.</summary>
/// <remarks>
/// H. N. Gupta, 2006, ex. 9.2; M. L. Mathur and R. P. Sharma, 8th ed. 2010, ex. 11.6. Steady flow, no auxiliary venturi, no air corrector:
/// see <see cref="ElementaryCarburettor"/> for what that leaves out.
/// </remarks>
public static class ChokeAndJetSizing
{
    private const double SecondsPerMinute = 60;

    /// <summary>Mean air flow of a four-stroke engine by volume, m³/s.</summary>
    /// <param name="sweptVolumeCubicMetres">Swept volume of the whole engine, m³.</param>
    /// <param name="speedRpm">Speed, rev/min.</param>
    /// <param name="volumetricEfficiency">Volumetric efficiency, 1.</param>
    /// <returns>m³/s at the density the efficiency refers to.</returns>
    public static double AirVolumeFlow(double sweptVolumeCubicMetres, double speedRpm, double volumetricEfficiency) =>
        volumetricEfficiency * sweptVolumeCubicMetres * speedRpm / (2 * SecondsPerMinute); // flow (32)

    /// <summary>Sizes choke and jet.</summary>
    /// <param name="demand">The engine and what is wanted; every quantity above zero.</param>
    /// <param name="gas">The gas.</param>
    /// <returns>Flow, throat pressure and diameters.</returns>
    public static SizingResult Size(SizingCase demand, IdealGas gas)
    {
        ArgumentNullException.ThrowIfNull(demand);
        ArgumentNullException.ThrowIfNull(gas);
        var air = AirVolumeFlow(demand.SweptVolumeCubicMetres, demand.SpeedRpm, demand.VolumetricEfficiency)
            * gas.Density(demand.Upstream) / demand.CarburettorCount;
        var throat = Venturi.ThroatPressure(demand.Upstream, demand.ThroatSpeedMetresPerSecond, 1, gas);
        var freeArea = Venturi.ThroatArea(
            air, Venturi.ThroatDensity(demand.Upstream, throat, gas), demand.ThroatSpeedMetresPerSecond, demand.AreaCoefficient);

        return new SizingResult
        {
            AirFlowKilogramsPerSecond = air,
            ThroatPressurePascals = throat,
            ChokeDiameterMetres = Circle.Diameter(freeArea / (1 - demand.ObstructionRatio * demand.ObstructionRatio)), // flow (33)
            JetDiameterMetres = JetDiameter(demand, air / demand.AirFuelRatio, demand.Upstream.PressurePascals - throat),
        };
    }

    private static double JetDiameter(SizingCase demand, double fuel, double depression)
    {
        var head = depression - demand.FuelDensity * demand.Gravity * demand.LipHeightMetres;
        return head > 0
            ? Circle.Diameter(IncompressibleOrifice.EffectiveArea(fuel, head, demand.FuelDensity) / demand.JetCoefficient) // flow (34)
            : double.PositiveInfinity;
    }
}
