using Tickover.Physics.Sending;

namespace Tickover.Bench.Gauge;

/// <summary>An invented drive: bends both ways, hills, camber, halts, and the shaking of the road over it.</summary>
internal static class RandomRoad
{
    private const double HardestBend = 3.5;                // m/s² to the side

    internal static RoadTrace Drive(int seed, double seconds, double step)
    {
        var draw = new Random(seed);
        var parts = new List<RoadSegment>();
        for (double made = 0; made < seconds;)
        {
            var part = Part(draw);
            parts.Add(part);
            made += part.SpeedMetresPerSecond > 0 ? part.LengthMetres / part.SpeedMetresPerSecond : part.StandsSeconds;
        }

        var smooth = DrawnRoad.Drive(parts, step, 0);
        var (shakeAhead, shakeLeft, shakeUp) = (new Shake(draw, 0.25), new Shake(draw, 0.3), new Shake(draw, 0.5));
        return new RoadTrace(step, smooth.Samples.Take((int)(seconds / step) + 1).Select(s => new RoadSample(
            s.AheadMetresPerSecondSquared + shakeAhead.Next(step), s.LeftMetresPerSecondSquared + shakeLeft.Next(step), s.UpMetresPerSecondSquared + shakeUp.Next(step))));
    }

    private static RoadSegment Part(Random draw)
    {
        var kind = draw.NextDouble();
        if (kind < 0.05)
        {
            return new RoadSegment { StandsSeconds = 10 + 50 * draw.NextDouble(), Grade = 0.04 * (draw.NextDouble() - 0.5), Camber = 0.04 * (draw.NextDouble() - 0.5) };
        }

        var speed = 8 + 20 * draw.NextDouble();
        var hardest = HardestBend / (speed * speed);
        return new RoadSegment
        {
            SpeedMetresPerSecond = speed,
            LengthMetres = speed * (kind < 0.5 ? 3 + 25 * draw.NextDouble() : 5 + 40 * draw.NextDouble()),
            CurvatureToLeft = kind < 0.5 ? hardest * (2 * draw.NextDouble() - 1) : 0,
            Grade = 0.12 * (draw.NextDouble() - 0.5),
            Camber = 0.05 * (draw.NextDouble() - 0.5),
        };
    }

    /// <summary>Chance coloured by a lag of 0.15 s.</summary>
    private sealed class Shake(Random draw, double size)
    {
        private const double Lag = 0.15;
        private double _value;

        internal double Next(double step)
        {
            var keep = Math.Exp(-step / Lag);
            var normal = Math.Sqrt(-2 * Math.Log(1 - draw.NextDouble())) * Math.Cos(2 * Math.PI * draw.NextDouble());
            _value = keep * _value + size * Math.Sqrt(1 - keep * keep) * normal;
            return _value;
        }
    }
}
