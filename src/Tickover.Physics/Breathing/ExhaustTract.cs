namespace Tickover.Physics.Breathing;

/// <summary>What the exhaust valve of one cylinder discharges into.</summary>
public sealed record ExhaustTract
{
    /// <summary>Back-pressure above ambient divided by the square of the cylinder's mean mass flow, Pa/(kg/s)².</summary>
    public required double BackPressureCoefficient { get; init; }

    /// <summary>Temperature of the gas standing in the exhaust, which comes back in the overlap, K.</summary>
    public double GasTemperatureKelvin { get; init; } = 900;
}
