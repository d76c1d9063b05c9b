namespace Tickover.Physics.Leaks;

/// <summary>One moment of a leak test.</summary>
/// <param name="Seconds">Time from any beginning, s.</param>
/// <param name="GaugePascals">Pressure above the air around, Pa.</param>
/// <param name="GasKelvins">Temperature of the gas in the tank, K.</param>
/// <param name="BarometerPascals">Pressure of the air around, Pa.</param>
public readonly record struct DecayReading(double Seconds, double GaugePascals, double GasKelvins, double BarometerPascals)
{
    /// <summary>Pressure of the gas from nothing, Pa.</summary>
    public double AbsolutePascals => GaugePascals + BarometerPascals;

    /// <summary>Moles of gas in each cubic metre, but for the gas constant, Pa/K.</summary>
    internal double PressureOverTemperature => AbsolutePascals / GasKelvins; // leaks (1)
}
