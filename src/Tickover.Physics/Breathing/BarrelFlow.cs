using Tickover.Physics.Flow;
using Tickover.Physics.Metering;

namespace Tickover.Physics.Breathing;

/// <summary>A barrel as a resistance and an inertance: breathing (7).</summary>
public static class BarrelFlow
{
    /// <summary>Free throat area of the choke, m².</summary>
    /// <param name="way">Air way of the barrel.</param>
    /// <returns>Area less the auxiliary venturi's body, m².</returns>
    public static double ChokeArea(BarrelAirWay way)
    {
        ArgumentNullException.ThrowIfNull(way);
        return Circle.Area(way.ChokeDiameterMetres) * (1 - way.ChokeObstruction);
    }

    /// <summary>Free area of the throttle plate's gap, m².</summary>
    /// <param name="way">Air way of the barrel.</param>
    /// <param name="openingRadians">Opening from the seat, radians; wide open is 90 degrees less the seated angle.</param>
    /// <returns>Area without by-pass drillings, m².</returns>
    public static double PlateArea(BarrelAirWay way, double openingRadians)
    {
        ArgumentNullException.ThrowIfNull(way);
        var plate = new ThrottlePlate
        {
            BoreMetres = way.ThrottleBoreMetres,
            ClosedAngleRadians = way.ClosedAngleRadians,
            SpindleDiameterMetres = way.SpindleDiameterMetres,
        };
        return plate.OpenArea(Math.Min(way.ClosedAngleRadians + openingRadians, Math.PI / 2));
    }

    /// <summary>Effective area of plate, choke and runner in series for air.</summary>
    /// <param name="way">Air way of the barrel.</param>
    /// <param name="runner">Runner behind it, or null where a shared volume follows.</param>
    /// <param name="openingRadians">Opening of the plate from its seat, radians.</param>
    /// <param name="leakArea">Area left with the plate shut, m².</param>
    /// <returns>Area of the one orifice with the same loss, m².</returns>
    public static double EffectiveArea(BarrelAirWay way, IntakeTract? runner, double openingRadians, double leakArea)
    {
        ArgumentNullException.ThrowIfNull(way);
        var gap = way.PlateDischargeCoefficient * (PlateArea(way, openingRadians) + way.BypassAreaSquareMetres) + leakArea;
        var choke = ChokeArea(way);
        var sum = 1 / (gap * gap) + way.ChokeLossCoefficient / (choke * choke);
        if (runner is not null)
        {
            var area = Circle.Area(runner.RunnerDiameterMetres);
            sum += runner.RunnerLossCoefficient / (area * area);
        }

        return 1 / Math.Sqrt(sum);
    }

    /// <summary>Inertance Σ L/A of the air column, 1/m.</summary>
    /// <param name="way">Air way of the barrel.</param>
    /// <param name="intake">Lengths.</param>
    /// <param name="shared">Whether a shared volume follows the plate, so that the runner is no part of this column.</param>
    /// <returns>Inertance, 1/m.</returns>
    internal static double Inertance(BarrelAirWay way, IntakeTract intake, bool shared)
    {
        var bore = Circle.Area(way.ThrottleBoreMetres);
        var sum = Upstream(way, intake) + intake.BarrelLengthMetres / bore;
        return shared ? sum : sum + intake.RunnerLengthMetres / Circle.Area(intake.RunnerDiameterMetres);
    }

    /// <summary>Inertance between the trumpet's mouth and the choke's throat, 1/m.</summary>
    internal static double Upstream(BarrelAirWay way, IntakeTract intake) =>
        intake.TrumpetLengthMetres / Circle.Area(way.ThrottleBoreMetres);
}
