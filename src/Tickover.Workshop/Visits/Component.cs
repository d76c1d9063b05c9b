namespace Tickover.Workshop.Visits;

/// <summary>An engine, a tank, a carburettor or another part with a number, for as long as it was on the car.</summary>
public sealed record Component : RecordItem<Component>
{
    /// <summary>The car.</summary>
    public Id<CustomerCar> Car { get; init; }

    /// <summary>What sort of part.</summary>
    public ComponentKind Kind { get; init; }

    /// <summary>Where on the car, such as "left" or "2".</summary>
    public string Place { get; init; } = "";

    /// <summary>What it is.</summary>
    public string What { get; init; } = "";

    /// <summary>The number stamped or cast on it.</summary>
    public string SerialNumber { get; init; } = "";

    /// <summary>The day it went on; null where it was there already.</summary>
    public DateOnly? FittedOn { get; init; }

    /// <summary>The day it came off; null while it is on.</summary>
    public DateOnly? TakenOffOn { get; init; }

    /// <summary>Where it went and why.</summary>
    public string Note { get; init; } = "";
}
