namespace Tickover.Physics.Sending;

/// <summary>The double lane change of ISO 3888: sections of coned lane and gaps between them. docs/physics/sending.md (22) to (24).</summary>
/// <remarks>Dimensions from memory of ISO 3888-1 and 3888-2. The driver's path is ours: the standard gives the lanes, not the line.</remarks>
public sealed class LaneChange
{
    private LaneChange(double[] lengths, double firstWidth, double middleWidth, double lastWidth, double shift, double usualSpeed)
    {
        (SectionMetres, FirstWidthMetres, MiddleWidthMetres, LastWidthMetres, ShiftMetres, UsualSpeedMetresPerSecond) =
            (lengths, firstWidth, middleWidth, lastWidth, shift, usualSpeed);
    }

    /// <summary>Lengths of the sections in turn, m: lane, gap, lane, gap, lane and, in part 1, run-out.</summary>
    public IReadOnlyList<double> SectionMetres { get; }

    /// <summary>Width of the first lane, m.</summary>
    public double FirstWidthMetres { get; }

    /// <summary>Width of the middle lane, m.</summary>
    public double MiddleWidthMetres { get; }

    /// <summary>Width of the last lane, m.</summary>
    public double LastWidthMetres { get; }

    /// <summary>How far the car moves aside, m.</summary>
    public double ShiftMetres { get; }

    /// <summary>Speed it is driven at, m/s: 80 km/h in part 1; part 2 is driven as fast as it goes, 60 km/h is taken.</summary>
    public double UsualSpeedMetresPerSecond { get; }

    /// <summary>Length from the first cone to the last, m.</summary>
    public double LengthMetres => SectionMetres.Sum();

    /// <summary>ISO 3888-1, the severe lane change.</summary>
    /// <param name="carWidthMetres">Width of the car, m; above zero.</param>
    /// <returns>The course.</returns>
    public static LaneChange Severe(double carWidthMetres)
    {
        Precondition.Positive(carWidthMetres);
        return new LaneChange([15, 30, 25, 25, 15, 15], 1.1 * carWidthMetres + 0.25, 1.2 * carWidthMetres + 0.25, 1.3 * carWidthMetres + 0.25, 3.5, 80 / 3.6); // sending (22)
    }

    /// <summary>ISO 3888-2, obstacle avoidance.</summary>
    /// <param name="carWidthMetres">Width of the car, m; above zero.</param>
    /// <returns>The course.</returns>
    /// <remarks>The shift is the least that clears the cones: the metre between the lanes and the car's own width.</remarks>
    public static LaneChange Avoidance(double carWidthMetres)
    {
        Precondition.Positive(carWidthMetres);
        return new LaneChange([12, 13.5, 11, 12.5, 12], 1.1 * carWidthMetres + 0.25, carWidthMetres + 1, Math.Max(3, 1.3 * carWidthMetres + 0.25), 1 + carWidthMetres, 60 / 3.6); // sending (23)
    }

    /// <summary>The drive through it at a constant speed, to the left first, with some straight road before and after.</summary>
    /// <param name="speedMetresPerSecond">m/s; above zero.</param>
    /// <param name="stepSeconds">Time between samples, s.</param>
    /// <param name="leadSeconds">Straight before the first cone, s.</param>
    /// <param name="tailSeconds">Straight after the last, s.</param>
    /// <returns>The trace.</returns>
    public RoadTrace Drive(double speedMetresPerSecond, double stepSeconds, double leadSeconds, double tailSeconds)
    {
        Precondition.Positive(speedMetresPerSecond);
        var count = (int)((leadSeconds + LengthMetres / speedMetresPerSecond + tailSeconds) / stepSeconds) + 1;
        return new RoadTrace(stepSeconds, Enumerable.Range(0, count).Select(k =>
        {
            var way = (k * stepSeconds - leadSeconds) * speedMetresPerSecond;
            return RoadSample.On(0, speedMetresPerSecond * speedMetresPerSecond * Curvature(way), 0, 0);
        }));
    }

    private double Curvature(double way)
    {
        var s = SectionMetres;
        // Each change of lane begins in the middle of one lane and ends in the middle of the next.
        var (from, to) = (0.5 * s[0], s[0] + s[1] + 0.5 * s[2]);
        var (back, end) = (to, s[0] + s[1] + s[2] + s[3] + 0.5 * s[4]);
        return Swerve(way, from, to) - Swerve(way, back, end);
    }

    // Second derivative of the shift along the quintic 10u³ − 15u⁴ + 6u⁵.
    private double Swerve(double way, double from, double to)
    {
        var u = (way - from) / (to - from);
        return u is <= 0 or >= 1 ? 0 : ShiftMetres * (60 * u - 180 * u * u + 120 * u * u * u) / ((to - from) * (to - from)); // sending (24)
    }
}
