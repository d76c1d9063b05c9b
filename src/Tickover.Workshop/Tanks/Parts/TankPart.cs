using Tickover.Physics.Linkages;
using Tickover.Physics.Tanks;

namespace Tickover.Workshop.Tanks.Parts;

/// <summary>One tank as described, in its place in the car.</summary>
public sealed record TankPart
{
    /// <summary>Its name on this car.</summary>
    public required string Name { get; init; }

    /// <summary>Its inside; metres from the point the car was measured from.</summary>
    public required TankShape Shape { get; init; }

    /// <summary>The tank's own point, which places in it are measured from, m.</summary>
    public SpaceVector Origin { get; init; }

    /// <summary>Foot of the dip stick, m.</summary>
    public required SpaceVector Foot { get; init; }

    /// <summary>The pick-up; null where the tank has none.</summary>
    public PickUp? PickUp { get; init; }

    /// <summary>Mouth of the cross-pipe, m; null where none was described.</summary>
    public SpaceVector? CrossPipe { get; init; }

    /// <summary>What it holds to the brim, l.</summary>
    public double CapacityLitres => Shape.VolumeCubicMetres * TankUnits.LitresPerCubicMetre;
}
