namespace Tickover.Workshop.Balance;

/// <summary>What the instruments are good to before the car's own repeats have been seen. All editable; figures common practice unless said.</summary>
public sealed record MeterSettings
{
    /// <summary>What can be read here; advice asks for nothing else.</summary>
    public ReadKinds Available { get; init; } = ReadKinds.Air;

    /// <summary>Standard deviation of an airflow reading, kg/h: half the smallest step read by eye.</summary>
    public double AirKilogramsPerHour { get; init; } = 0.10;

    /// <summary>The same as a part of the reading; the larger counts.</summary>
    public double AirPart { get; init; } = 0.02;

    /// <summary>Standard deviation of a vacuum reading, kPa.</summary>
    public double VacuumKilopascals { get; init; } = 0.7;

    /// <summary>Standard deviation of lambda of one cylinder, sensor and engine together.</summary>
    public double Lambda { get; init; } = 0.02;

    /// <summary>Standard deviation of a header's temperature, °C (assumed).</summary>
    public double HeaderCelsius { get; init; } = 18;

    /// <summary>Air follows speed with this exponent while a round is read at idle (assumed, ±0.5).</summary>
    public double IdleSpeedExponent { get; init; } = 0.5;

    /// <summary>The same held at a raised speed (assumed, ±0.5).</summary>
    public double HeldSpeedExponent { get; init; } = 1;

    /// <summary>Standard deviation of an air reading.</summary>
    /// <param name="air">The reading, kg/h.</param>
    /// <returns>kg/h.</returns>
    public double AirDeviation(double air) => Math.Max(AirKilogramsPerHour, AirPart * Math.Abs(air));
}
