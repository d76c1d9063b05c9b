namespace Tickover.Workshop.Visits;

/// <summary>Something measured: a fact, kept as typed and in SI, struck out and kept again but never changed.</summary>
public sealed record Reading : RecordItem<Reading>, IOfVisit, IAppendOnly
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The stage it was taken in.</summary>
    public Stage Stage { get; init; }

    /// <summary>What was measured: a key of the list of measures.</summary>
    public string Measure { get; init; } = "";

    /// <summary>What it was taken of.</summary>
    public Place Place { get; init; } = Place.WholeCar;

    /// <summary>As found, while working, or as left.</summary>
    public Moment Moment { get; init; }

    /// <summary>The text as typed, with its unit; empty where there is no reading.</summary>
    public string Typed { get; init; } = "";

    /// <summary>The value in the measure's SI unit; null for words and where there is no reading.</summary>
    public double? Si { get; init; }

    /// <summary>Why there is no reading; empty where there is one.</summary>
    public string NoReading { get; init; } = "";

    /// <summary>What it was taken with.</summary>
    public Id<Instrument>? Instrument { get; init; }

    /// <summary>Engine speed at the reading in rpm; null where it does not matter or is not known.</summary>
    public double? EngineSpeedRpm { get; init; }

    /// <summary>The round it belongs to: one complete set; null outside of rounds.</summary>
    public Guid? Round { get; init; }

    /// <summary>The reading this one stands in for.</summary>
    public Id<Reading>? Corrects { get; init; }

    /// <summary>When it was taken, by the clock of the tablet.</summary>
    public DateTimeOffset TakenAt { get; init; }

    /// <summary>Anything to remember of it.</summary>
    public string Note { get; init; } = "";
}
