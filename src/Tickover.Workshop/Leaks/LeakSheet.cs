namespace Tickover.Workshop.Leaks;

/// <summary>A leak test as written down.</summary>
public sealed record LeakSheet
{
    /// <summary>Temperature taken where none was read, °C.</summary>
    public const double UsualCelsius = 20;

    /// <summary>How far gas drifts unseen where no temperature was read, K: what a garage does while a door is opened.</summary>
    public const double DriftUnread = 2;

    /// <summary>How far the gas may drift unseen by a thermometer on the tank, K.</summary>
    public const double UsualDrift = 0.3;

    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The document it was read from.</summary>
    public required string Document { get; init; }

    /// <summary>Gas in the tank, l.</summary>
    public required double Litres { get; init; }

    /// <summary>How far that may be off, as a part.</summary>
    public required double LitresWithin { get; init; }

    /// <summary>The largest flat panel; null where it is not described.</summary>
    public LeakPanel? Panel { get; init; }

    /// <summary>Unit the gauge was read in, for showing.</summary>
    public required PressureUnit Unit { get; init; }

    /// <summary>How far a reading of the gauge may be off against the next, Pa.</summary>
    public required double GaugeErrorPascals { get; init; }

    /// <summary>How far a reading of the thermometer may be off, K.</summary>
    public required double ThermometerError { get; init; }

    /// <summary>How far the gas may have warmed or cooled unseen, K.</summary>
    public required double DriftKelvins { get; init; }

    /// <summary>The air around at the beginning, Pa.</summary>
    public required double BarometerPascals { get; init; }

    /// <summary>The readings in order of time.</summary>
    public required IReadOnlyList<LeakMoment> Readings { get; init; }

    /// <summary>Leak that has to be seen, mbar l/s; null where nothing is asked.</summary>
    public double? LimitMillibarLitres { get; init; }

    /// <summary>Whether the temperature was read.</summary>
    public bool HasTemperature => Readings.All(r => r.Celsius is not null);

    /// <summary>Length of the test, min.</summary>
    public double Minutes => Readings[^1].Minutes - Readings[0].Minutes;
}
