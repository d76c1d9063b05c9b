using Tickover.Workshop.Visits;

namespace Tickover.Workshop.FaultFinding;

/// <summary>One physical cause of trouble; the same one wherever it is named.</summary>
public sealed record FaultCause
{
    /// <summary>Its key, such as <c>vent-blocked</c>.</summary>
    public required string Key { get; init; }

    /// <summary>What it is, in the trade's words.</summary>
    public required string Words { get; init; }

    /// <summary>Where to look.</summary>
    public required string Where { get; init; }

    /// <summary>The place on the drawing of the car; null where the drawing does not show it.</summary>
    public FaultSpot? Spot { get; init; }

    /// <summary>What to do about it.</summary>
    public required string ToDo { get; init; }

    /// <summary>Stage of the job it belongs to.</summary>
    public required Stage Stage { get; init; }

    /// <summary>What of the car it concerns.</summary>
    public required FaultKind Kind { get; init; }

    /// <summary>Key of the part on the section drawing; empty where the drawing does not show it.</summary>
    public string Part { get; init; } = string.Empty;

    /// <summary>Chance that a car which comes in has it, before anything is known, 0 to 1.</summary>
    public required double Prior { get; init; }

    /// <summary>Where the chance comes from.</summary>
    public required string Origin { get; init; }

    /// <summary>How far it may be trusted: low, middling or high.</summary>
    public required string Confidence { get; init; }

    /// <summary>Closed cases counted: in how many it was found, of how many; (0, 0) where none were.</summary>
    public (int Found, int Of) Closed { get; init; }

    /// <summary>The chance after closed cases; <see cref="Prior"/> where none were counted.</summary>
    public required double Learned { get; init; }
}
