namespace Tickover.Physics.Sending;

/// <summary>Drives everyone can repeat.</summary>
public static class Manoeuvres
{
    /// <summary>Radius ISO 4138 prefers for its steady circle, m; from memory.</summary>
    public const double SteadyRadiusMetres = 100;

    /// <summary>The smallest radius ISO 4138 allows, m; from memory.</summary>
    public const double LeastSteadyRadiusMetres = 30;

    /// <summary>A steady circle as in ISO 4138: in, round at a constant speed, out again and straight on.</summary>
    /// <param name="speedMetresPerSecond">m/s; above zero.</param>
    /// <param name="radiusMetres">m; above zero.</param>
    /// <param name="toLeft">Whether it is driven anticlockwise.</param>
    /// <param name="seconds">How long round, s.</param>
    /// <param name="leadSeconds">Straight before, s.</param>
    /// <param name="tailSeconds">Straight after, s.</param>
    /// <param name="stepSeconds">Time between samples, s.</param>
    /// <returns>The trace.</returns>
    public static RoadTrace SteadyCircle(
        double speedMetresPerSecond, double radiusMetres, bool toLeft, double seconds, double leadSeconds, double tailSeconds, double stepSeconds)
    {
        var bend = (toLeft ? 1 : -1) / Precondition.Positive(radiusMetres);
        return DrawnRoad.Drive([Part(speedMetresPerSecond, 0, leadSeconds), Part(speedMetresPerSecond, bend, seconds), Part(speedMetresPerSecond, 0, tailSeconds)], stepSeconds);
    }

    /// <summary>A roundabout one way, straight road, and a roundabout the other way.</summary>
    /// <param name="speedMetresPerSecond">Speed round, m/s; above zero.</param>
    /// <param name="radiusMetres">Radius of the car's line, m; above zero.</param>
    /// <param name="turns">How many times round.</param>
    /// <param name="betweenSeconds">Straight before, between and after, s.</param>
    /// <param name="stepSeconds">Time between samples, s.</param>
    /// <returns>The trace: clockwise, then anticlockwise.</returns>
    public static RoadTrace Roundabouts(double speedMetresPerSecond, double radiusMetres, double turns, double betweenSeconds, double stepSeconds)
    {
        var round = 2 * Math.PI * turns * Precondition.Positive(radiusMetres) / speedMetresPerSecond;
        var straight = Part(speedMetresPerSecond, 0, betweenSeconds);
        return DrawnRoad.Drive(
            [straight, Part(speedMetresPerSecond, -1 / radiusMetres, round), straight, Part(speedMetresPerSecond, 1 / radiusMetres, round), straight], stepSeconds);
    }

    private static RoadSegment Part(double speed, double curvature, double seconds) => new()
    {
        SpeedMetresPerSecond = Precondition.Positive(speed),
        CurvatureToLeft = curvature,
        LengthMetres = speed * seconds,
    };
}
