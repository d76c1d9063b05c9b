using Tickover.Physics.Flow;

namespace Tickover.Physics.Balancing;

/// <summary>Air past a nearly shut plate with sonic flow in its gap: how far the plate stands, and what a degree changes.</summary>
/// <remarks>docs/physics/balancing.md (8) to (10). Discharge 0.75 as in the reference's idle geometry; valid while the depression keeps the gap near sonic.</remarks>
public sealed record NearlyShutPlate
{
    private const double DegreesPerRadian = 180 / Math.PI;

    /// <summary>Bore, m.</summary>
    public required double BoreMetres { get; init; }

    /// <summary>Angle where the plate closes, radians from square to the bore.</summary>
    public required double ClosedAngleRadians { get; init; }

    /// <summary>Discharge factor of the gap, 0 to 1.</summary>
    public double Discharge { get; init; } = 0.75;

    /// <summary>Air before the plate.</summary>
    public GasState Before { get; init; } = new(100_000, 298.15);

    /// <summary>Sonic flow through a square metre, kg/(s·m²).</summary>
    public double ChokedFlux => Discharge * Before.PressurePascals * IsentropicFlow.ChokedPsi(Ratio) / Math.Sqrt(GasConstant * Before.TemperatureKelvin); // (8)

    private static double Ratio => IdealGas.Air.SpecificHeatRatio;

    private static double GasConstant => IdealGas.Air.GasConstant;

    /// <summary>How far the plate stands from shut for an airflow.</summary>
    /// <param name="kilogramsPerSecond">Air, kg/s; above zero.</param>
    /// <returns>Angle from the closed one, radians; up to 60° where the airflow asks for more than the law holds.</returns>
    public double OpeningRadians(double kilogramsPerSecond)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(kilogramsPerSecond);
        var part = kilogramsPerSecond / ChokedFlux / Circle.Area(BoreMetres);
        var angle = Math.Acos(Math.Max(0.5, 1 - part) * Math.Cos(ClosedAngleRadians)); // (9) turned round
        return angle - ClosedAngleRadians;
    }

    /// <summary>What a degree of plate changes.</summary>
    /// <param name="kilogramsPerSecond">Air now, kg/s; above zero.</param>
    /// <returns>kg/s a degree.</returns>
    public double FlowPerDegree(double kilogramsPerSecond)
    {
        var angle = ClosedAngleRadians + OpeningRadians(kilogramsPerSecond);
        return ChokedFlux * Circle.Area(BoreMetres) * Math.Sin(angle) / Math.Cos(ClosedAngleRadians) / DegreesPerRadian; // (10)
    }
}
