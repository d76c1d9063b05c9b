using Tickover.Workshop.Cars;

namespace Tickover.Web.Cars;

/// <summary>A car's description as a form.</summary>
public sealed record DescriptionView
{
    /// <summary>The document on the shelf.</summary>
    public required ShelvedCar Shelved { get; init; }

    /// <summary>The car as it is on the shelf.</summary>
    public required Car Car { get; init; }

    /// <summary>The barrel whose figures are in the form, or null for all alike.</summary>
    public required CarBarrel? Barrel { get; init; }

    /// <summary>The groups of fields.</summary>
    public required IReadOnlyList<DescriptionGroup> Groups { get; init; }

    /// <summary>Faults that belong to no field.</summary>
    public IReadOnlyList<Fault> OtherFaults { get; init; } = [];

    /// <summary>How many fields have faults.</summary>
    public int FaultyFields => Groups.Sum(g => g.Fields.Count(f => f.Fault is not null));

    /// <summary>The barrel drawn.</summary>
    public CarBarrel Drawn => Barrel ?? Car.Barrels[0];

    /// <summary>The query that names the barrel; empty for all alike.</summary>
    public string Query => Barrel is null ? "" : $"?barrel={Barrel.Number}";
}
