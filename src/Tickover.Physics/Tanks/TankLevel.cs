using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>What is below one level of fuel.</summary>
public sealed record TankLevel
{
    /// <summary>The level: height of the surface above the tank's origin as the fuel sees it, m.</summary>
    public required double LevelMetres { get; init; }

    /// <summary>Fuel below it, m³.</summary>
    public required double VolumeCubicMetres { get; init; }

    /// <summary>Wall wetted, m².</summary>
    public required double WettedSquareMetres { get; init; }

    /// <summary>Free surface, m²; the rate of volume with level.</summary>
    public required double SurfaceSquareMetres { get; init; }

    /// <summary>Middle of the fuel's mass, m; null where there is none.</summary>
    public SpaceVector? Centroid { get; init; }
}
