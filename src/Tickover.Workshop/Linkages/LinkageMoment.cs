namespace Tickover.Workshop.Linkages;

/// <summary>A linkage at one position of the pedal.</summary>
public sealed record LinkageMoment
{
    /// <summary>How far the pedal is down, 0 to 1 of its travel.</summary>
    public required double Down { get; init; }

    /// <summary>How far the pedal's shaft has really turned, degrees: it stops where a plate meets its stop.</summary>
    public required double PedalDegrees { get; init; }

    /// <summary>The plates, in order of <see cref="Linkage.Carburettors"/>.</summary>
    public required IReadOnlyList<PlateMoment> Plates { get; init; }

    /// <summary>Allowed deviation of the air from the mean, as a part.</summary>
    public required double LimitPart { get; init; }

    /// <summary>What that limit is in degrees of a plate at the mean angle; infinite where the gap no longer changes.</summary>
    public required double LimitDegrees { get; init; }

    /// <summary>Mean angle of the plates, degrees.</summary>
    public double MeanDegrees => Plates.Average(p => p.Degrees);

    /// <summary>Largest deviation of the air from the mean, as a part.</summary>
    public double WorstPart => Plates.Max(p => Math.Abs(p.DeviationPart));

    /// <summary>Whether every carburettor is within the limit.</summary>
    public bool IsWithin => WorstPart <= LimitPart;
}
