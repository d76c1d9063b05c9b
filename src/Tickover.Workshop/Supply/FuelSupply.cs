using Tickover.Physics.Supply;

namespace Tickover.Workshop.Supply;

/// <summary>A fuel supply as a document describes it.</summary>
public sealed record FuelSupply
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The document.</summary>
    public required string Document { get; init; }

    /// <summary>The unit its pressures are written in.</summary>
    public required PressureUnit Unit { get; init; }

    /// <summary>The line.</summary>
    public required SupplyLine Line { get; init; }

    /// <summary>Name of the fuel, such as E5.</summary>
    public required string FuelName { get; init; }

    /// <summary>The fuel.</summary>
    public required SupplyFuel Fuel { get; init; }

    /// <summary>What the engine takes.</summary>
    public required SupplyEngine Engine { get; init; }

    /// <summary>Idle, full load, hot, in this order.</summary>
    public required IReadOnlyList<SupplyCaseSetting> Cases { get; init; }

    /// <summary>How the car is thrown about.</summary>
    public required SupplyAttitude Attitude { get; init; }

    /// <summary>Name of the last filter before the first float valve; null where there is none.</summary>
    public string? FineFilter { get; init; }

    /// <summary>Part of the demand each float valve feeds, by its name; empty where all feed alike.</summary>
    public IReadOnlyDictionary<string, double> Shares { get; init; } = new Dictionary<string, double>(StringComparer.Ordinal);

    /// <summary>Readings taken of it, in SI; empty where none.</summary>
    public IReadOnlyDictionary<SupplyReadingKind, double> Readings { get; init; } = new Dictionary<SupplyReadingKind, double>();

    /// <summary>Notes of the parts, by name: where a figure comes from.</summary>
    public IReadOnlyDictionary<string, string> Notes { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);
}
