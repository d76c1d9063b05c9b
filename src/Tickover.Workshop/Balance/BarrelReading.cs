namespace Tickover.Workshop.Balance;

/// <summary>What one barrel read, as corrected by nothing.</summary>
/// <param name="Barrel">Number of the barrel.</param>
public sealed record BarrelReading(int Barrel)
{
    /// <summary>Air through the barrel, kg/h; null where not read.</summary>
    public double? Air { get; init; }

    /// <summary>Depression behind the plate, kPa; null where not read.</summary>
    public double? Vacuum { get; init; }

    /// <summary>Lambda of its cylinder; null where not read.</summary>
    public double? Lambda { get; init; }

    /// <summary>Temperature of its header, °C; null where not read.</summary>
    public double? Header { get; init; }

    /// <summary>Engine speed at the reading, rpm; null where not noted.</summary>
    public double? Rpm { get; init; }
}
