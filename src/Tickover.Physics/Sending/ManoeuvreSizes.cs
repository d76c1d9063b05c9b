namespace Tickover.Physics.Sending;

/// <summary>Lengths of a lane-change course and how far it goes to the side.</summary>
/// <remarks>
/// ISO 3888-1:1999/2018 (severe lane change, 80 km/h) and ISO 3888-2:2002/2011 (obstacle avoidance): sections in order of driving, from memory.
/// </remarks>
public sealed record ManoeuvreSizes
{
    /// <summary>Smallest radius of the steady circle of ISO 4138, m; 100 m is recommended (from memory).</summary>
    public const double SmallestCircleRadius = 30;

    /// <summary>Recommended radius of the steady circle of ISO 4138, m (from memory).</summary>
    public const double CircleRadius = 100;

    /// <summary>Sections: lane in, across, second lane, back, lane out and what follows in it, m.</summary>
    public required IReadOnlyList<double> SectionsMetres { get; init; }

    /// <summary>Middle of the second lane beside that of the first, m, to the left.</summary>
    public required double OffsetMetres { get; init; }

    /// <summary>ISO 3888-1.</summary>
    public static ManoeuvreSizes LaneChange { get; } = new() { SectionsMetres = [15, 30, 25, 25, 15, 15], OffsetMetres = 3.5 };

    /// <summary>ISO 3888-2, for a car 1.7 m wide: lanes 1.1 b + 0.25 m and b + 1 m wide with 1 m between them.</summary>
    public static ManoeuvreSizes Obstacle { get; } = new() { SectionsMetres = [12, 13.5, 11, 12.5, 12], OffsetMetres = Offset(1.7) };

    /// <summary>Length of the course, m.</summary>
    public double TotalMetres => SectionsMetres.Sum();

    /// <summary>Curvature of the line driven.</summary>
    /// <param name="along">From the first cone, m.</param>
    /// <returns>1/m, positive to the left.</returns>
    public double Curvature(double along)
    {
        const double third = 1.0 / 3;
        var s = SectionsMetres;
        var outStart = s[0] * (1 - third);
        var outEnd = s[0] + s[1] + s[2] * third;
        var backStart = s[0] + s[1] + s[2] * (1 - third);
        var backEnd = s[0] + s[1] + s[2] + s[3] + s[4] * third;
        return Bend(along, outStart, outEnd) - Bend(along, backStart, backEnd);
    }

    private static double Offset(double width) => 0.5 * (1.1 * width + 0.25) + 1 + 0.5 * (width + 1);

    // Second derivative of the fifth-degree step 10 t³ − 15 t⁴ + 6 t⁵: no jump of curvature at either end.
    private double Bend(double along, double start, double end)
    {
        var length = end - start;
        var t = (along - start) / length;
        return t is > 0 and < 1 ? OffsetMetres * 60 * t * (1 - t) * (1 - 2 * t) / (length * length) : 0; // sending (9)
    }
}
