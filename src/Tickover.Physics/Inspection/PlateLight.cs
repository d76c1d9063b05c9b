using Tickover.Physics.Flow;

namespace Tickover.Physics.Inspection;

/// <summary>The light seen past a shut throttle plate, and the gap of one that stands open.</summary>
public static class PlateLight
{
    /// <summary>Area of the light.</summary>
    /// <param name="boreMetres">Throttle bore, m; above zero.</param>
    /// <param name="share">Part of the rim where light is seen, 0 to 1.</param>
    /// <param name="gapMetres">Gap by feeler or wire there, m; not negative.</param>
    /// <returns>m².</returns>
    public static double Area(double boreMetres, double share, double gapMetres) => Precondition.Within(share, 0, 1) * Math.PI * Precondition.Positive(boreMetres) * Precondition.NotNegative(gapMetres); // inspection (23)

    /// <summary>Angle at which a plate of a length along its slope stands shut in a bore.</summary>
    /// <param name="boreMetres">Bore, m; above zero.</param>
    /// <param name="plateMetres">Longer axis of the plate, m; not below the bore.</param>
    /// <returns>Radians from square to the bore.</returns>
    public static double ClosedAngle(double boreMetres, double plateMetres) => Math.Acos(Precondition.Within(boreMetres / plateMetres, 0, 1)); // inspection (24)

    /// <summary>Rod that just passes between the plate's edge and the bore, square to the spindle.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="openingRadians">Opening from its seat, radians; 0 to a quarter turn less the closed angle.</param>
    /// <returns>Gap seen along the bore, m.</returns>
    public static double Rod(ThrottlePlate plate, double openingRadians)
    {
        ArgumentNullException.ThrowIfNull(plate);
        var k = Math.Cos(plate.ClosedAngleRadians + openingRadians) / Math.Cos(plate.ClosedAngleRadians);
        return plate.BoreMetres / 2 * (1 - k); // inspection (25)
    }

    /// <summary>Opening at which a plate leaves an area open.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="areaSquareMetres">Area, m²; zero to what it leaves wide open.</param>
    /// <returns>Radians from its seat.</returns>
    public static double OpeningOf(ThrottlePlate plate, double areaSquareMetres)
    {
        ArgumentNullException.ThrowIfNull(plate);
        Precondition.Within(areaSquareMetres, 0, plate.OpenArea(Math.PI / 2));
        const int halvings = 60;
        var (low, high) = (plate.ClosedAngleRadians, plate.FullyOpenAngleRadians);
        for (var i = 0; i < halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = plate.OpenArea(middle) < areaSquareMetres ? (middle, high) : (low, middle); // flow (16) turned round
        }

        return ((low + high) / 2) - plate.ClosedAngleRadians;
    }
}
