namespace Tickover.Physics.Leaks;

/// <summary>A tank shut up under a little pressure and watched. docs/physics/leaks.md (1) to (8).</summary>
public sealed record DecayTest
{
    /// <summary>Fewest readings from which their own scatter says something.</summary>
    private const int ScatterReadings = 5;

    private const double FastPart = 0.3, FurtherPart = 0.7;

    /// <summary>The readings, in order of time; two and more.</summary>
    public required IReadOnlyList<DecayReading> Readings { get; init; }

    /// <summary>Gas in the tank, m³; above zero.</summary>
    public required double VolumeCubicMetres { get; init; }

    /// <summary>How much room the walls give for each pascal, m³/Pa; not negative.</summary>
    public double SpringCubicMetresPerPascal { get; init; }

    /// <summary>The instruments.</summary>
    public required DecayInstruments Instruments { get; init; }

    /// <summary>Works out the leak.</summary>
    /// <returns>The leak and its band.</returns>
    /// <exception cref="InvalidOperationException">Fewer than two readings, or times that do not rise.</exception>
    public LeakRate Leak()
    {
        Check();
        var t = Readings.Select(r => r.Seconds).ToArray();
        var (kelvins, pascals) = (Readings.Average(r => r.GasKelvins), Readings.Average(r => r.AbsolutePascals));
        var gauge = Line.Through(t, [.. Readings.Select(r => r.GaugePascals)]);
        var amount = Line.Through(t, [.. Readings.Select(r => r.PressureOverTemperature)]);
        var spring = pascals * Precondition.NotNegative(SpringCubicMetresPerPascal);
        // The walls follow the gauge, not the temperature.
        var rate = -kelvins * (VolumeCubicMetres * amount.Slope + spring / kelvins * gauge.Slope); // leaks (3)
        var deviation = Deviation(amount, t[^1] - t[0], kelvins, pascals);
        var wide = Math.Sqrt(deviation * deviation + Math.Pow(rate * Instruments.VolumePart, 2));
        return new LeakRate
        {
            PascalCubicMetresPerSecond = rate,
            DeviationOfNone = deviation,
            Deviation = wide,
            WithoutTemperature = -(VolumeCubicMetres + spring) * gauge.Slope, // leaks (2)
            MolesPerSecond = rate / (LeakConstants.MolarGasConstant * kelvins), // leaks (4)
            GasKelvins = kelvins,
            AbsolutePascals = pascals,
            GaugePascals = Readings.Average(r => r.GaugePascals),
            Validity = Fallen(),
        };
    }

    /// <summary>How long a test has to be, with so many readings evenly over it, to see a leak.</summary>
    /// <param name="leakPascalCubicMetresPerSecond">The leak, Pa m³/s; above zero.</param>
    /// <returns>s.</returns>
    public double SecondsToSee(double leakPascalCubicMetresPerSecond)
    {
        Check();
        double n = Readings.Count;
        var (kelvins, pascals) = (Readings.Average(r => r.GasKelvins), Readings.Average(r => r.AbsolutePascals));
        var scatter = kelvins * Room(pascals) * Math.Sqrt(Instruments.Variance(pascals, kelvins) * 12 * (n - 1) / (n * (n + 1)));
        var drift = Room(pascals) * pascals * Instruments.UnseenDriftKelvins / (Math.Sqrt(3) * kelvins);
        return LeakRate.SeenDeviations * Math.Sqrt(scatter * scatter + drift * drift) / Precondition.Positive(leakPascalCubicMetresPerSecond); // leaks (8)
    }

    private double Room(double pascals) => VolumeCubicMetres + pascals * SpringCubicMetresPerPascal;

    private double Deviation(Line amount, double seconds, double kelvins, double pascals)
    {
        var known = Math.Sqrt(Instruments.Variance(pascals, kelvins) / amount.SquaresOfTime);
        var slope = Readings.Count >= ScatterReadings ? Math.Max(known, amount.SlopeDeviation) : known; // leaks (5)
        var drift = pascals * Precondition.NotNegative(Instruments.UnseenDriftKelvins) / (Math.Sqrt(3) * kelvins * kelvins * seconds); // leaks (6)
        return kelvins * Room(pascals) * Math.Sqrt(slope * slope + drift * drift);
    }

    // A leak slows as the pressure falls; the rate is then that of the middle of the test.
    private Validity Fallen()
    {
        var (first, last) = (Readings[0].GaugePascals, Readings[^1].GaugePascals);
        var part = first > 0 ? (first - last) / first : 0;
        return Validity.Of("fall of the gauge, part of the first reading", part, (double.NegativeInfinity, FastPart), (double.NegativeInfinity, FurtherPart));
    }

    private void Check()
    {
        Precondition.Positive(VolumeCubicMetres);
        if (Readings.Count < 2 || Readings.Zip(Readings.Skip(1), (a, b) => b.Seconds - a.Seconds).Any(d => !(d > 0)))
        {
            throw new InvalidOperationException("A leak test needs two readings or more with rising times.");
        }

        foreach (var reading in Readings)
        {
            Precondition.Positive(reading.GasKelvins);
            Precondition.Positive(reading.AbsolutePascals);
        }
    }
}
