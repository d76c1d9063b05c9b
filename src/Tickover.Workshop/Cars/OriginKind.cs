namespace Tickover.Workshop.Cars;

/// <summary>Where a figure comes from.</summary>
public enum OriginKind
{
    /// <summary>Nothing is known but what the trade usually finds.</summary>
    CommonPractice,

    /// <summary>Taken for granted by the model; no workshop measures it.</summary>
    Assumed,

    /// <summary>Computed from other figures of this car.</summary>
    Computed,

    /// <summary>Written in the car's document: measured, or read off the part.</summary>
    Given,
}
