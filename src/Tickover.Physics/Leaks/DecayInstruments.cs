namespace Tickover.Physics.Leaks;

/// <summary>How far the instruments of a leak test may be off; standard deviations.</summary>
public sealed record DecayInstruments
{
    /// <summary>One reading of the gauge, Pa; above zero.</summary>
    public required double GaugePascals { get; init; }

    /// <summary>One reading of the thermometer, K; not negative.</summary>
    public required double ThermometerKelvins { get; init; }

    /// <summary>One reading of the barometer, Pa; zero where it was read once only and taken as steady.</summary>
    public double BarometerPascals { get; init; }

    /// <summary>How far the gas may have warmed or cooled unseen from the first reading to the last, K; not negative.</summary>
    /// <remarks>A thermometer on the tank does not see the air within. Nor does a barometer read once see the weather: put its share in here.</remarks>
    public double UnseenDriftKelvins { get; init; }

    /// <summary>The tank's volume, as a part of it; not negative.</summary>
    public double VolumePart { get; init; }

    // Variance of p/T in one reading.
    internal double Variance(double pascals, double kelvins)
    {
        var pressure = Precondition.Positive(GaugePascals) * GaugePascals + Precondition.NotNegative(BarometerPascals) * BarometerPascals;
        var warmth = pascals * Precondition.NotNegative(ThermometerKelvins) / kelvins;
        return (pressure + warmth * warmth) / (kelvins * kelvins); // leaks (5)
    }
}
