namespace Tickover.Workshop.Tanks;

/// <summary>One line of the strapping table, the car level and the tanks at one level.</summary>
public sealed record StrappingLine
{
    /// <summary>Fuel in all tanks, l.</summary>
    public required double Litres { get; init; }

    /// <summary>Fuel and dip of each tank, l and mm.</summary>
    public required IReadOnlyList<(double Litres, double DipMillimetres)> Tanks { get; init; }

    /// <summary>Resistance of the sender, Ω; null where nothing tells it.</summary>
    public double? Ohms { get; init; }

    /// <summary>Where the needle stands, 0 at E to 1 at F; null where nothing tells it.</summary>
    public double? Needle { get; init; }
}
