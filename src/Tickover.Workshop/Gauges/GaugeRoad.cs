using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>A road with a name.</summary>
/// <param name="Name">As at the beginning of a sentence.</param>
/// <param name="Trace">What it does to the car.</param>
public sealed record GaugeRoad(string Name, RoadTrace Trace)
{
    private const double KmPerHour = 1 / 3.6;
    private const double UsualAfter = 64;

    /// <summary>The manoeuvres by the words of a document.</summary>
    public static IReadOnlyDictionary<string, Manoeuvre> ByName { get; } = new Dictionary<string, Manoeuvre>(StringComparer.Ordinal)
    {
        ["long bend"] = Manoeuvre.LongBend,
        ["circle"] = Manoeuvre.Circle,
        ["lane change"] = Manoeuvre.LaneChange,
        ["obstacle"] = Manoeuvre.Obstacle,
        ["roundabouts"] = Manoeuvre.Roundabouts,
        ["stop and hill"] = Manoeuvre.StopAndHill,
    };

    /// <summary>A manoeuvre.</summary>
    /// <param name="manoeuvre">Which.</param>
    /// <param name="speed">m/s; none: the usual one.</param>
    /// <param name="radius">m; none: the usual one.</param>
    /// <param name="after">Seconds straight on behind it; none: the usual.</param>
    /// <returns>The road.</returns>
    public static GaugeRoad Of(Manoeuvre manoeuvre, double? speed = null, double? radius = null, double? after = null)
    {
        var on = after ?? UsualAfter;
        return manoeuvre switch
        {
            Manoeuvre.Circle => Circle(speed ?? 72 * KmPerHour, radius ?? ManoeuvreSizes.CircleRadius, on),
            Manoeuvre.LaneChange => new("Lane change between cones, ISO 3888-1", DrawnRoad.LaneChange(ManoeuvreSizes.LaneChange, speed ?? 80 * KmPerHour, on)),
            Manoeuvre.Obstacle => new("Round an obstacle between cones, ISO 3888-2", DrawnRoad.LaneChange(ManoeuvreSizes.Obstacle, speed ?? 60 * KmPerHour, on)),
            Manoeuvre.Roundabouts => new("A roundabout to the right, then one to the left", DrawnRoad.Roundabouts(radius ?? 20, speed ?? 30 * KmPerHour, on)),
            Manoeuvre.StopAndHill => StopAndHill(speed ?? 60 * KmPerHour, on),
            _ => LongBend(speed ?? 60 * KmPerHour, radius ?? 80, on),
        };
    }

    private static GaugeRoad LongBend(double speed, double radius, double on) => new("A long bend to the left", DrawnRoad.Of(
        [new(30, speed, speed, 0, 0, 0), new(26, speed, speed, 1 / radius, 0, 0), new(on, speed, speed, 0, 0, 0)]));

    private static GaugeRoad Circle(double speed, double radius, double on)
    {
        var size = Math.Max(radius, ManoeuvreSizes.SmallestCircleRadius);
        return new("A steady circle to the left, ISO 4138", DrawnRoad.SteadyCircle(size, speed * speed / size, 60, on));
    }

    private static GaugeRoad StopAndHill(double speed, double on) => new("Braking to a stop, then off uphill", DrawnRoad.Of(
        [new(20, speed, speed, 0, 0, 0), new(speed / 5, speed, 0, 0, 0, 0), new(15, 0, 0, 0, 0.1, 0), new(12, 0, speed, 0, 0.1, 0), new(25, speed, speed, 0, 0.1, 0), new(on, speed, speed, 0, 0, 0)]));
}
