namespace Tickover.Physics.Supply;

/// <summary>How a line is tested in the workshop.</summary>
public sealed record SupplyTest
{
    /// <summary>The line as it should be, its pump by the maker's figures or by those of a good one.</summary>
    public required SupplyLine Line { get; init; }

    /// <summary>Warmth, air and pump speed while testing; demands do not matter.</summary>
    public required SupplyDuty Duty { get; init; }

    /// <summary>Name of the filter between the two flows; null where there is none.</summary>
    public string? FilterName { get; init; }

    /// <summary>Bore of the hose into the can, m; above zero.</summary>
    public double CanBoreMetres { get; init; } = 0.006;

    /// <summary>What keeps the line from being tested.</summary>
    /// <returns>One sentence a fault; empty where it can be.</returns>
    public IReadOnlyList<string> Faults()
    {
        var faults = Line.Faults().Concat(Duty.Faults(Line)).Concat(SupplyText.NotAboveZero("test", "bore of the hose into the can in metres", CanBoreMetres)).ToList();
        if (faults.Count == 0 && Line.Pump is null)
        {
            faults.Add("The line has no pump; readings are only told apart on a line with one.");
        }

        if (FilterName is { } name && !Line.Parts.Any(part => part is FuelFilter && part.Name.Equals(name, StringComparison.Ordinal)))
        {
            faults.Add($"{name} is no filter of the line.");
        }

        return faults;
    }
}
