namespace Tickover.Physics.Tanks;

/// <summary>One step of a fill beside the shape.</summary>
public sealed record FillLine
{
    /// <summary>What was read.</summary>
    public required FillStep Read { get; init; }

    /// <summary>The dip the shape gives as drawn, m.</summary>
    public required double DrawnDipMetres { get; init; }

    /// <summary>The dip it gives as set right, m.</summary>
    public required double FittedDipMetres { get; init; }

    /// <summary>Fuel at the dip read by the shape set right, m³.</summary>
    public required double FittedCubicMetres { get; init; }

    /// <summary>Band of that fuel, one standard deviation, m³.</summary>
    public required double BandCubicMetres { get; init; }

    /// <summary>Whether the step stands out from the others by more than three of its deviations.</summary>
    public required bool StandsOut { get; init; }
}
