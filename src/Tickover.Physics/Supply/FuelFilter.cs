namespace Tickover.Physics.Supply;

/// <summary>A strainer or filter: a part that grows with the flow (its element) and one that grows with its square (its unions).</summary>
/// <remarks>No friction law serves for an element one cannot see into; one or two measured drops do.</remarks>
public sealed record FuelFilter : SupplyPart
{
    /// <summary>Viscosity <see cref="ElementResistance"/> was measured with, Pa s: petrol at 20 °C.</summary>
    public const double MeasuredViscosity = 4.2e-4;

    /// <summary>Drop of the clean element for each unit of flow, Pa s/m³; not negative.</summary>
    public required double ElementResistance { get; init; }

    /// <summary>Drop of unions and housing for each unit of the flow's square, Pa s²/m⁶; not negative.</summary>
    public required double UnionResistance { get; init; }

    /// <summary>How many times the clean element's resistance it has now, 1; from 1 on.</summary>
    public double Loading { get; init; } = 1;

    /// <summary>Size of what is kept back, m; null where the maker says nothing.</summary>
    public double? FinenessMetres { get; init; }

    /// <summary>A filter from one drop measured on it, shared between element and unions.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="dropPascals">Drop measured, Pa; not negative.</param>
    /// <param name="volumeFlow">At which flow, m³/s; above zero.</param>
    /// <param name="elementShare">The element's part of the drop at that flow, 1; 0 to 1.</param>
    /// <returns>The filter, clean.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure out of range.</exception>
    public static FuelFilter FromDrop(string name, double dropPascals, double volumeFlow, double elementShare)
    {
        var drop = Precondition.NotNegative(dropPascals);
        var flow = Precondition.Positive(volumeFlow);
        var share = Precondition.Within(elementShare, 0, 1);
        return new FuelFilter
        {
            Name = name,
            ElementResistance = share * drop / flow, // supply (6)
            UnionResistance = (1 - share) * drop / (flow * flow),
        };
    }

    /// <inheritdoc/>
    internal override double Drop(double volumeFlow, double density, double viscosity) =>
        Loading * ElementResistance * viscosity / MeasuredViscosity * volumeFlow + QuadraticDrop.Of(UnionResistance, volumeFlow); // supply (6)

    /// <inheritdoc/>
    internal override IEnumerable<string> OwnFaults() =>
    [
        .. SupplyText.Negative(Name, "resistance of the element", ElementResistance),
        .. SupplyText.Negative(Name, "resistance of the unions", UnionResistance),
        .. SupplyText.OutOf(Name, "loading", Loading, 1, 1e6),
        .. FinenessMetres is { } size ? SupplyText.NotAboveZero(Name, "fineness in metres", size) : [],
    ];
}
