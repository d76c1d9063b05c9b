namespace Tickover.Physics.Breathing;

/// <summary>Barrels and the cylinders they feed: one barrel on one cylinder, or several through a shared volume.</summary>
public sealed record IntakeGroup
{
    /// <summary>Indices of barrels, from 0.</summary>
    public required IReadOnlyList<int> Barrels { get; init; }

    /// <summary>Indices of cylinders, from 0.</summary>
    public required IReadOnlyList<int> Cylinders { get; init; }

    /// <summary>Volume between the throttle plates and the runners, m³; zero where one barrel feeds one cylinder directly.</summary>
    public double SharedVolumeCubicMetres { get; init; }
}
