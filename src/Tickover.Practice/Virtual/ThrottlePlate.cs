namespace Tickover.Practice.Virtual;

/// <summary>The gap past a round plate in a bore: docs/physics/practice.md (1) and (2).</summary>
internal static class ThrottlePlate
{
    /// <summary>Air a square millimetre of gap passes while the flow is sonic, kg/h: 237 kg/s per m² at 1 bar and 25 °C, discharge 0.75 (trade report 2.2).</summary>
    public const double ChokedAirPerSquareMillimetre = 237e-6 * 3600 * 0.75;

    private const double RadiansPerDegree = Math.PI / 180;
    private const double WidestDegrees = 80;

    /// <summary>Area of the gap, mm².</summary>
    /// <param name="bore">Bore, mm.</param>
    /// <param name="closed">Angle where the plate closes, degrees.</param>
    /// <param name="opening">How far it is opened beyond that, degrees.</param>
    public static double Area(double bore, double closed, double opening)
    {
        var radius = bore / 2;
        var theta = closed + Math.Clamp(opening, 0, WidestDegrees - closed);
        return Math.PI * radius * radius * (1 - (Math.Cos(theta * RadiansPerDegree) / Math.Cos(closed * RadiansPerDegree))); // practice (1)
    }

    /// <summary>Opening that gives an area, degrees beyond closed.</summary>
    public static double Opening(double bore, double closed, double area)
    {
        var radius = bore / 2;
        var cosine = Math.Cos(closed * RadiansPerDegree) * (1 - (area / (Math.PI * radius * radius)));
        return (Math.Acos(Math.Clamp(cosine, 0, 1)) / RadiansPerDegree) - closed;
    }
}
