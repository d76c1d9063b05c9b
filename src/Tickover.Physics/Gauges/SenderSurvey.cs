namespace Tickover.Physics.Gauges;

/// <summary>What is known when a sender and its gauge are judged.</summary>
public sealed record SenderSurvey
{
    /// <summary>The readings, one or more.</summary>
    public required IReadOnlyList<SenderReading> Readings { get; init; }

    /// <summary>Part of the float's way for fuel in, m³ to 0..1; from the tank's shape or, roughly, fuel over what it holds.</summary>
    public required Func<double, double> Travel { get; init; }

    /// <summary>How well that is known, one standard deviation: some 0.05 from shape and arm, 0.1 from volume alone.</summary>
    public double TravelDeviation { get; init; } = 0.1;

    /// <summary>Family of the sender; null where it is not known.</summary>
    public SenderFamily? Sender { get; init; }

    /// <summary>Family of the gauge; null where it is not known.</summary>
    public SenderFamily? Gauge { get; init; }
}
