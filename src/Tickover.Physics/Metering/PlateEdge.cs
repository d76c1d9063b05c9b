using Tickover.Physics.Flow;

namespace Tickover.Physics.Metering;

/// <summary>Where the plate's edge stands on the progression holes: metering (13), (14).</summary>
public static class PlateEdge
{
    /// <summary>Travel of the plate's edge up the bore from its seat.</summary>
    /// <param name="way">Air way of the barrel.</param>
    /// <param name="openingRadians">Opening from the seat, radians; wide open is 90 degrees less the seated angle.</param>
    /// <returns>Travel along the bore, m.</returns>
    public static double Travel(BarrelAirWay way, double openingRadians)
    {
        ArgumentNullException.ThrowIfNull(way);
        var angle = Math.Min(way.ClosedAngleRadians + openingRadians, Math.PI / 2);
        return way.ThrottleBoreMetres / 2 * (Math.Sin(angle) - Math.Sin(way.ClosedAngleRadians)) / Math.Cos(way.ClosedAngleRadians);
    }

    /// <summary>Areas of the progression holes behind and before the edge.</summary>
    /// <param name="idle">Idle circuit with the holes.</param>
    /// <param name="way">Air way of the barrel.</param>
    /// <param name="openingRadians">Opening from the seat, radians.</param>
    /// <returns>Areas behind the edge (they feed) and before it (they bleed), m².</returns>
    public static HoleSplit Split(IdleCircuit idle, BarrelAirWay way, double openingRadians)
    {
        ArgumentNullException.ThrowIfNull(idle);
        var edge = Travel(way, openingRadians);
        var (behind, all) = (0.0, 0.0);
        foreach (var hole in idle.ProgressionHoles)
        {
            behind += Circle.SegmentArea(hole.DiameterMetres, edge - hole.PositionMetres + hole.DiameterMetres / 2);
            all += Circle.Area(hole.DiameterMetres);
        }

        return new HoleSplit(behind, all - behind);
    }

    /// <summary>Free annulus under the mixture screw's cone, never more than its seat bore: metering (15).</summary>
    /// <param name="idle">Idle circuit.</param>
    /// <returns>Area, m²; zero with the screw seated.</returns>
    public static double ScrewArea(IdleCircuit idle)
    {
        ArgumentNullException.ThrowIfNull(idle);
        return MixtureScrew.GapArea(
            idle.ScrewSeatDiameterMetres, idle.ScrewHalfAngleRadians, idle.ScrewTurns * idle.ScrewPitchMetres);
    }
}
