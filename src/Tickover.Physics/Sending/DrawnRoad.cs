namespace Tickover.Physics.Sending;

/// <summary>A drive over stretches of road, driven smoothly. docs/physics/sending.md (20), (21).</summary>
public static class DrawnRoad
{
    /// <summary>How hard the driver gains and loses speed at most, m/s²; an assumption, brisk and everyday.</summary>
    public const double GentleMetresPerSecondSquared = 1.5;

    /// <summary>Time in which the steering and the road's slope go over from one stretch to the next, s; an assumption.</summary>
    public const double SteeringSeconds = 1.5;

    private const double LeastSpeed = 0.5;

    /// <summary>The trace of a drive.</summary>
    /// <param name="road">The stretches, at least one.</param>
    /// <param name="stepSeconds">Time between samples, s; above zero.</param>
    /// <param name="startSpeed">Speed at the beginning, m/s; that of the first stretch where not said.</param>
    /// <returns>The trace.</returns>
    public static RoadTrace Drive(IReadOnlyList<RoadSegment> road, double stepSeconds, double? startSpeed = null)
    {
        if (road.Count == 0)
        {
            throw new ArgumentException("No stretch of road; there must be at least one.", nameof(road));
        }

        var driven = new List<(double Along, double Curve, double Grade, double Camber, double Speed)>();
        var speed = startSpeed ?? road[0].SpeedMetresPerSecond;
        for (var i = 0; i < road.Count; i++)
        {
            speed = Over(road[i], i + 1 < road.Count ? road[i + 1].SpeedMetresPerSecond : road[i].SpeedMetresPerSecond, speed, stepSeconds, driven);
        }

        var half = (int)(0.5 * SteeringSeconds / stepSeconds);
        var (curve, grade, camber, along) = (
            Smooth([.. driven.Select(d => d.Curve)], half), Smooth([.. driven.Select(d => d.Grade)], half),
            Smooth([.. driven.Select(d => d.Camber)], half), Smooth([.. driven.Select(d => d.Along)], half / 3));
        return new RoadTrace(
            stepSeconds,
            driven.Select((d, k) => RoadSample.On(along[k], d.Speed * d.Speed * curve[k], grade[k], camber[k]))); // sending (20)
    }

    // Speed goes to what the stretch says, and in its last part to what the next one does.
    private static double Over(
        RoadSegment part, double next, double speed, double step, List<(double Along, double Curve, double Grade, double Camber, double Speed)> driven)
    {
        var (way, time) = (0.0, 0.0);
        while (part.SpeedMetresPerSecond > 0 ? way < part.LengthMetres : speed > 0 || time < part.StandsSeconds)
        {
            var slowing = (speed * speed - next * next) / (2 * GentleMetresPerSecondSquared); // sending (21)
            var wanted = part.LengthMetres - way <= slowing ? Math.Min(next, part.SpeedMetresPerSecond) : part.SpeedMetresPerSecond;
            var change = Math.Clamp(wanted - speed, -GentleMetresPerSecondSquared * step, GentleMetresPerSecondSquared * step);
            driven.Add((change / step, part.CurvatureToLeft, part.Grade, part.Camber, speed));
            speed = Math.Max(part.SpeedMetresPerSecond > 0 ? LeastSpeed : 0, speed + change);
            (way, time) = (way + speed * step, time + (speed > 0 ? 0 : step));
        }

        return speed;
    }

    private static double[] Smooth(double[] values, int half)
    {
        var sums = new double[values.Length + 1];
        for (var i = 0; i < values.Length; i++)
        {
            sums[i + 1] = sums[i] + values[i];
        }

        return [.. values.Select((_, i) =>
        {
            var (from, to) = (Math.Max(0, i - half), Math.Min(values.Length, i + half + 1));
            return (sums[to] - sums[from]) / (to - from);
        })];
    }
}
