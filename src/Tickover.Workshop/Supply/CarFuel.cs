namespace Tickover.Workshop.Supply;

/// <summary>Air and fuel of all barrels of a car at one speed and opening, by the breathing and metering models.</summary>
public sealed record CarFuel
{
    /// <summary>Engine speed, rpm.</summary>
    public required double Rpm { get; init; }

    /// <summary>Opening of the plates from their seats, degrees.</summary>
    public required double ThrottleDegrees { get; init; }

    /// <summary>Air, kg/s.</summary>
    public required double AirKilogramsPerSecond { get; init; }

    /// <summary>Fuel, kg/s; above zero.</summary>
    public required double FuelKilogramsPerSecond { get; init; }

    /// <summary>λ of all of it together, 1.</summary>
    public required double Lambda { get; init; }

    /// <summary>Half width of the band on the ratio of air to fuel as a part of it, 1.</summary>
    public required double RelativeBand { get; init; }

    /// <summary>Mass of air to mass of fuel, 1.</summary>
    public double AirFuelRatio => AirKilogramsPerSecond / FuelKilogramsPerSecond;
}
