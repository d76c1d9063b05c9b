namespace Tickover.Physics.Supply;

/// <summary>What an engine takes.</summary>
public static class FuelDemand
{
    /// <summary>Fuel for a brake power, kg/s.</summary>
    /// <param name="brakeWatts">Brake power, W; not negative.</param>
    /// <param name="specificConsumption">Brake specific fuel consumption, kg/J; carburettors at full load 0.30 to 0.36 kg/kWh (from memory).</param>
    /// <returns>kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure out of range.</exception>
    public static double FromPower(double brakeWatts, double specificConsumption) =>
        Precondition.NotNegative(brakeWatts) * Precondition.Positive(specificConsumption); // supply (30)

    /// <summary>Fuel for the air an engine takes, kg/s.</summary>
    /// <param name="airKilogramsPerSecond">Air, kg/s; not negative. From the breathing model, or swept volume, speed and filling.</param>
    /// <param name="airFuelRatio">Air to fuel by mass, 1; above zero.</param>
    /// <returns>kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure out of range.</exception>
    public static double FromAir(double airKilogramsPerSecond, double airFuelRatio) =>
        Precondition.NotNegative(airKilogramsPerSecond) / Precondition.Positive(airFuelRatio); // supply (31)

    /// <summary>Air of a four-stroke engine, kg/s.</summary>
    /// <param name="sweptCubicMetres">Swept volume of the whole engine, m³; above zero.</param>
    /// <param name="rpm">Speed, rev/min; above zero.</param>
    /// <param name="filling">Volumetric efficiency, 1; above zero.</param>
    /// <param name="airDensity">Density of the air it breathes, kg/m³; above zero.</param>
    /// <returns>kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure out of range.</exception>
    public static double FourStrokeAir(double sweptCubicMetres, double rpm, double filling, double airDensity)
    {
        const double secondsOfTwoTurns = 120; // two turns a filling, sixty seconds a minute
        return Precondition.Positive(sweptCubicMetres) * Precondition.Positive(rpm) / secondsOfTwoTurns
            * Precondition.Positive(filling) * Precondition.Positive(airDensity); // supply (31)
    }
}
