namespace Tickover.Physics.Flow;

/// <summary>Areas of round holes, whole and partly covered.</summary>
public static class Circle
{
    /// <summary>Area of a circle, m².</summary>
    /// <param name="diameterMetres">Diameter, m.</param>
    /// <returns>m².</returns>
    public static double Area(double diameterMetres) => Math.PI / 4 * diameterMetres * diameterMetres;

    /// <summary>Diameter of a circle of given area, m.</summary>
    /// <param name="areaSquareMetres">Area, m²; not negative.</param>
    /// <returns>m.</returns>
    public static double Diameter(double areaSquareMetres) => Math.Sqrt(4 / Math.PI * areaSquareMetres);

    /// <summary>Area of the part of a hole that a straight edge has uncovered, m².</summary>
    /// <param name="diameterMetres">Diameter of the hole, m; not negative.</param>
    /// <param name="uncoveredMetres">How far the edge stands across the hole, m; nothing is open below zero, all from the diameter on.</param>
    /// <returns>m²; continuous in value and slope.</returns>
    public static double SegmentArea(double diameterMetres, double uncoveredMetres)
    {
        var radius = diameterMetres / 2;
        if (uncoveredMetres <= 0 || radius <= 0)
        {
            return 0;
        }

        if (uncoveredMetres >= diameterMetres)
        {
            return Area(diameterMetres);
        }

        // The angle the chord is seen under; by the arc cosine of (r - s)/r a sliver would come out negative.
        var angle = 4 * Math.Asin(Math.Sqrt(uncoveredMetres / diameterMetres));
        return radius * radius / 2 * (angle - Math.Sin(angle)); // flow (14)
    }
}
