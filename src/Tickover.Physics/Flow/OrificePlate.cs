namespace Tickover.Physics.Flow;

/// <summary>The thin orifice plate in a pipe, as flow is metered with.</summary>
public static class OrificePlate
{
    /// <summary>Expansibility factor: measured compressible over incompressible flow, 1.</summary>
    /// <remarks>ISO 5167-2:2003, 5.3.2.2. Stated for a pressure ratio from 0.75 on. A plate contracts the stream further than a rounded choke: compare <see cref="IsentropicFlow.Phi"/>.</remarks>
    /// <param name="diameterRatio">Bore of plate over bore of pipe, 1; 0.1 to 0.75.</param>
    /// <param name="pressureRatio">Pressure behind over pressure before, 1; 0 to 1.</param>
    /// <param name="gamma">Isentropic exponent, 1; above one.</param>
    /// <returns>1.</returns>
    public static double Expansibility(double diameterRatio, double pressureRatio, double gamma)
    {
        var beta4 = Math.Pow(diameterRatio, 4);
        return 1 - (0.351 + 0.256 * beta4 + 0.93 * beta4 * beta4) * (1 - Math.Pow(pressureRatio, 1 / gamma)); // flow (27)
    }

    /// <summary>Whether the standard covers a plate and its pressure ratio.</summary>
    /// <param name="diameterRatio">Bore of plate over bore of pipe, 1.</param>
    /// <param name="pressureRatio">Pressure behind over pressure before, 1.</param>
    /// <returns>Inside or outside.</returns>
    public static Validity ValidityAt(double diameterRatio, double pressureRatio) =>
        Validity.Of("plate bore over pipe bore, 1", diameterRatio, (0.1, 0.75))
            .And(Validity.Of("pressure ratio, 1", pressureRatio, (0.75, 1)));
}
