using Tickover.Physics.Air;

namespace Tickover.Physics.Sending;

/// <summary>Roads drawn from pieces and the standard manoeuvres.</summary>
public static class DrawnRoad
{
    /// <summary>Largest slope or camber for which gravity across the floor may be taken in full, 1.</summary>
    public const double SteepestSlope = 0.20;

    /// <summary>Time in which a driver turns the wheel into a bend, s (common practice).</summary>
    public const double TurnInSeconds = 1.5;

    private const double Gravity = AirConstants.StandardGravityMetresPerSecondSquared;
    private const double Step = 0.01;

    /// <summary>Accelerations along pieces of road; bends, slopes and cambers come in over <see cref="TurnInSeconds"/>.</summary>
    /// <param name="pieces">The pieces in order.</param>
    /// <returns>The trace at 100 Hz.</returns>
    public static RoadTrace Of(IReadOnlyList<RoadPiece> pieces)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        var ahead = new List<double>();
        var left = new List<double>();
        RoadPiece before = default;
        foreach (var piece in pieces)
        {
            var count = (int)Math.Round(Precondition.Positive(piece.Seconds) / Step);
            var ramp = Math.Min(TurnInSeconds, piece.Seconds);
            for (var i = 0; i < count; i++)
            {
                var part = Math.Min(1, i * Step / ramp);
                var speed = piece.StartSpeed + (piece.EndSpeed - piece.StartSpeed) * i / count;
                var curvature = before.Curvature + part * (piece.Curvature - before.Curvature);
                var slope = before.Slope + part * (piece.Slope - before.Slope);
                var camber = before.Camber + part * (piece.Camber - before.Camber);
                ahead.Add((piece.EndSpeed - piece.StartSpeed) / piece.Seconds + Gravity * Sine(slope)); // sending (8)
                left.Add(speed * speed * curvature + Gravity * Sine(camber));
            }

            before = piece;
        }

        return new RoadTrace(Step, [.. ahead], [.. left]);
    }

    /// <summary>A steady circle (ISO 4138, constant radius): straight, circle, straight.</summary>
    /// <param name="radius">m; the standard asks for 30 m at least and recommends 100 m.</param>
    /// <param name="acceleration">Sideways, m/s²; positive to the left.</param>
    /// <param name="circleSeconds">Time on the circle, s.</param>
    /// <param name="afterSeconds">Time straight on behind it, s.</param>
    /// <returns>The trace.</returns>
    public static RoadTrace SteadyCircle(double radius, double acceleration, double circleSeconds, double afterSeconds)
    {
        var speed = Math.Sqrt(Math.Abs(acceleration) * Precondition.Within(radius, ManoeuvreSizes.SmallestCircleRadius, 1000));
        return Of(
        [
            new RoadPiece(10, speed, speed, 0, 0, 0),
            new RoadPiece(circleSeconds, speed, speed, Math.Sign(acceleration) / radius, 0, 0),
            new RoadPiece(afterSeconds, speed, speed, 0, 0, 0),
        ]);
    }

    /// <summary>A roundabout three quarters round one way, and later one the other way.</summary>
    /// <param name="radius">Radius driven, m.</param>
    /// <param name="speed">m/s.</param>
    /// <param name="afterSeconds">Time straight on behind the second, s.</param>
    /// <returns>The trace.</returns>
    public static RoadTrace Roundabouts(double radius, double speed, double afterSeconds)
    {
        var round = 1.5 * Math.PI * Precondition.Positive(radius) / Precondition.Positive(speed);
        RoadPiece Straight(double seconds) => new(seconds, speed, speed, 0, 0, 0);
        return Of([Straight(15), new(round, speed, speed, -1 / radius, 0, 0), Straight(40), new(round, speed, speed, 1 / radius, 0, 0), Straight(afterSeconds)]);
    }

    /// <summary>A lane change and back between cones (ISO 3888).</summary>
    /// <param name="sizes">Which of the two courses.</param>
    /// <param name="speed">m/s, held.</param>
    /// <param name="afterSeconds">Time straight on behind it, s.</param>
    /// <returns>The trace.</returns>
    /// <remarks>The standard gives the cones, not the line: here the smoothest one that uses the lanes' first and last third to turn.</remarks>
    public static RoadTrace LaneChange(ManoeuvreSizes sizes, double speed, double afterSeconds)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        const double before = 10;
        var course = sizes.TotalMetres / Precondition.Positive(speed);
        var count = (int)Math.Round((before + course + afterSeconds) / Step) + 1;
        var (ahead, left) = (new double[count], new double[count]);
        for (var i = 0; i < count; i++)
        {
            left[i] = speed * speed * sizes.Curvature((i * Step - before) * speed);
        }

        return new RoadTrace(Step, ahead, left);
    }

    private static double Sine(double slope) => slope / Math.Sqrt(1 + slope * slope);
}
