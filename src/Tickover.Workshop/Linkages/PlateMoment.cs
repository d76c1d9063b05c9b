namespace Tickover.Workshop.Linkages;

/// <summary>The plates of one carburettor at one position of the pedal.</summary>
public sealed record PlateMoment
{
    /// <summary>Angle from square to the bore, degrees, the mean of its plates under the springs; never below the stop's.</summary>
    public required double Degrees { get; init; }

    /// <summary>How much later the plate furthest from the drive stands for wind-up, degrees.</summary>
    public required double WindUpDegrees { get; init; }

    /// <summary>Open area of one plate, mm².</summary>
    public required double AreaSquareMillimetres { get; init; }

    /// <summary>Angle less the mean of all carburettors, degrees.</summary>
    public required double DeviationDegrees { get; init; }

    /// <summary>Open area against the mean of all, less one: its air, as long as air follows the gap.</summary>
    public required double DeviationPart { get; init; }

    /// <summary>How far play lets the angle wander against the others, degrees either way.</summary>
    public required double PlayDegrees { get; init; }

    /// <summary>How far play lets the air wander against the others, either way, as a part.</summary>
    public required double PlayPart { get; init; }
}
