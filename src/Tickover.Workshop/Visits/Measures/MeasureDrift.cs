namespace Tickover.Workshop.Visits.Measures;

/// <summary>How one measure moved between the hand-over of a visit and the next visit.</summary>
public sealed record MeasureDrift
{
    /// <summary>The measure.</summary>
    public required MeasureDefinition Measure { get; init; }

    /// <summary>The visit that handed the car over.</summary>
    public required Visit Earlier { get; init; }

    /// <summary>The visit at which it was read again.</summary>
    public required Visit Later { get; init; }

    /// <summary>The round at hand-over.</summary>
    public required RoundSpread Before { get; init; }

    /// <summary>The round as found.</summary>
    public required RoundSpread Now { get; init; }

    /// <summary>The places read both times.</summary>
    public required IReadOnlyList<PlaceDrift> Places { get; init; }

    /// <summary>Change of the mean, as a part of the mean at hand-over.</summary>
    public required double ChangeOfMean { get; init; }

    /// <summary>Days between leaving and coming back; null where the leaving was not noted.</summary>
    public int? Days { get; init; }

    /// <summary>Distance between the visits, in the car's unit; null where an odometer reading is missing.</summary>
    public int? Distance { get; init; }

    /// <summary>What it may mean.</summary>
    public required DriftMeaning Meaning { get; init; }

    /// <summary>The same in a sentence, with its source.</summary>
    public required string Words { get; init; }
}
