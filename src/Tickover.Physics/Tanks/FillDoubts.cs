namespace Tickover.Physics.Tanks;

/// <summary>How well things are known before a fill is compared; one standard deviation each. Assumptions of this project.</summary>
public sealed record FillDoubts
{
    /// <summary>Reading of the dip stick, m.</summary>
    public double DipMetres { get; init; } = 0.002;

    /// <summary>Volume of the drawn shape, and of the can, as a part: a tape on a pressed tank.</summary>
    public double ScalePart { get; init; } = 0.03;

    /// <summary>Fuel left at the beginning, m³.</summary>
    public double LeftCubicMetres { get; init; } = 0.0005;

    /// <summary>Zero of the stick, m.</summary>
    public double ZeroMetres { get; init; } = 0.002;

    /// <summary>Slope of the floor either way, rad.</summary>
    public double TiltRadians { get; init; } = 0.0087;
}
