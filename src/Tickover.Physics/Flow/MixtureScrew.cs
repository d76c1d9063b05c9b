namespace Tickover.Physics.Flow;

/// <summary>The gap between a mixture screw's cone and its seat.</summary>
public static class MixtureScrew
{
    /// <summary>Area of the gap, measured in the plane of the seat, m².</summary>
    /// <param name="seatDiameterMetres">Bore of the seat, m; not negative.</param>
    /// <param name="halfAngleRadians">Half angle of the cone, radians; 0 to π/2, ends excluded.</param>
    /// <param name="liftMetres">Lift from lightly seated, m; shut at and below zero.</param>
    /// <returns>m²; at most the bore of the seat.</returns>
    public static double GapArea(double seatDiameterMetres, double halfAngleRadians, double liftMetres)
    {
        var gap = Math.Max(0, liftMetres) * Math.Tan(halfAngleRadians);
        return gap >= seatDiameterMetres / 2
            ? Circle.Area(seatDiameterMetres) // the cone's tip has left the seat
            : Math.PI * gap * (seatDiameterMetres - gap); // flow (15)
    }
}
