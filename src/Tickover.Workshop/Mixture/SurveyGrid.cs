namespace Tickover.Workshop.Mixture;

/// <summary>The speeds and throttle openings a map is computed at.</summary>
public sealed record SurveyGrid
{
    /// <summary>Engine speeds, rpm, rising.</summary>
    public required IReadOnlyList<double> SpeedsRpm { get; init; }

    /// <summary>Plate openings from the seated plate, degrees, rising; wide open is 90 less the seated angle.</summary>
    public required IReadOnlyList<double> ThrottleDegrees { get; init; }
}
