using Tickover.Workshop.Cars;

namespace Tickover.Workshop.JetChoice;

/// <summary>One more reading, and how much it would narrow what is still open about the choice.</summary>
public sealed record NextReading
{
    /// <summary>The car with the jets it should be taken with.</summary>
    public required Car Car { get; init; }

    /// <summary>Whether those are the jets fitted now.</summary>
    public required bool WithFittedJets { get; init; }

    /// <summary>Engine speed, rpm.</summary>
    public required double SpeedRpm { get; init; }

    /// <summary>Opening, degrees.</summary>
    public required double ThrottleDegrees { get; init; }

    /// <summary>Regime in words.</summary>
    public required string Regime { get; init; }

    /// <summary>Expected λ there and half the width of its 90 % band as a part of it: what the reading will be held against.</summary>
    public required (double Lambda, double Half) Expected { get; init; }

    /// <summary>Part of the doubt about being in target, over the whole map, that the reading would take away, 0 to 1.</summary>
    public required double Narrows { get; init; }
}
