using Tickover.Physics.Air;

namespace Tickover.Physics.Flow;

/// <summary>A gas of constant specific heats.</summary>
/// <param name="GasConstant">Gas constant, J/(kg K); above zero.</param>
/// <param name="SpecificHeatRatio">Ratio of the specific heats, 1; above one.</param>
public sealed record IdealGas(double GasConstant, double SpecificHeatRatio)
{
    /// <summary>Dry air.</summary>
    public static IdealGas Air { get; } = new(AirConstants.DryAirGasConstant, AirConstants.SpecificHeatRatio);

    /// <summary>Gas constant, J/(kg K); above zero.</summary>
    public double GasConstant { get; } = Precondition.Positive(GasConstant);

    /// <summary>Ratio of the specific heats, 1; between 1.01 and 2.</summary>
    public double SpecificHeatRatio { get; } = Precondition.Within(SpecificHeatRatio, 1.01, 2);

    /// <summary>Specific heat at constant pressure, J/(kg K).</summary>
    public double SpecificHeatAtConstantPressure => SpecificHeatRatio * GasConstant / (SpecificHeatRatio - 1); // flow (1)

    /// <summary>Density, kg/m³.</summary>
    /// <param name="state">Pressure and temperature.</param>
    /// <returns>kg/m³.</returns>
    public double Density(GasState state) => state.PressurePascals / (GasConstant * state.TemperatureKelvin);

    /// <summary>Speed of sound, m/s.</summary>
    /// <param name="temperatureKelvin">Temperature, K; not negative.</param>
    /// <returns>m/s.</returns>
    public double SpeedOfSound(double temperatureKelvin) => Math.Sqrt(SpecificHeatRatio * GasConstant * temperatureKelvin);
}
