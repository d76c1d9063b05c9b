namespace Tickover.Physics.Flow;

/// <summary>Absolute pressure and temperature of a gas on one side of an opening.</summary>
/// <remarks><c>default</c> is a vacuum at absolute zero, from which nothing flows.</remarks>
/// <param name="PressurePascals">Absolute pressure, Pa.</param>
/// <param name="TemperatureKelvin">Temperature, K; above zero wherever gas flows from.</param>
public readonly record struct GasState(double PressurePascals, double TemperatureKelvin);
