using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>The mouth of the pick-up in a tank.</summary>
/// <param name="Mouth">Where its lowest opening is, m.</param>
/// <param name="DrawDownMetres">How far above the mouth it begins to draw air, m, for the dimple over the mouth; not negative.</param>
public readonly record struct PickUp(SpaceVector Mouth, double DrawDownMetres = 0)
{
    /// <summary>How deep the mouth lies under the surface, along the fuel's own upright.</summary>
    /// <param name="level">Level, m.</param>
    /// <param name="tilt">The tilt.</param>
    /// <returns>m; below zero where it draws air.</returns>
    public double Cover(double level, Tilt tilt) => level - tilt.HeightOf(Mouth);

    /// <summary>Fuel that stays in the tank when the pick-up first draws air.</summary>
    /// <param name="tank">The tank as it stands.</param>
    /// <returns>m³; all of it where the mouth lies above the tank.</returns>
    /// <remarks>For a tilt that lasts. In a bend that ends the fuel comes back.</remarks>
    public double Unusable(TankAtTilt tank)
    {
        ArgumentNullException.ThrowIfNull(tank);
        return tank.VolumeBelow(tank.Tilt.HeightOf(Mouth) + Precondition.NotNegative(DrawDownMetres)); // tanks (13)
    }
}
