namespace Tickover.Workshop.Linkages.Parts;

/// <summary>The plates on a carburettor's spindle. Angles from square to the bore.</summary>
public sealed record ThrottlePart
{
    /// <summary>Which way round the spindle opens.</summary>
    public required TurningSense Opens { get; init; }

    /// <summary>Bore at the plates, mm.</summary>
    public required double BoreMillimetres { get; init; }

    /// <summary>Angle of a plate shut in its bore, degrees.</summary>
    public required double SeatedDegrees { get; init; }

    /// <summary>Angle on the stop screw, degrees.</summary>
    public required double IdleDegrees { get; init; }

    /// <summary>Angle on the full-throttle stop, degrees.</summary>
    public required double FullDegrees { get; init; }

    /// <summary>Where along the spindle the plates are, mm.</summary>
    public required IReadOnlyList<double> PlatesAlongMillimetres { get; init; }

    /// <summary>Its return spring; null for none.</summary>
    public SpringPart? Spring { get; init; }
}
