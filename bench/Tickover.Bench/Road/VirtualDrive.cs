namespace Tickover.Bench.Road;

/// <summary>An invented drive of some ten minutes: warming up, idle, traffic on the progression holes, cruises, pulls, fast openings, overrun.</summary>
internal static class VirtualDrive
{
    /// <summary>Time between moments, s.</summary>
    public const double Step = 0.05;

    private const double Stop = 1.6;                     // degrees the stop screw holds
    private const double Idle = 870;                     // rpm
    private const double TopGear = 32.0 / 1000 / 3.6;    // m/s a rpm in top
    private const double ThirdGear = 22.0 / 1000 / 3.6;
    private const double FootLag = 0.12;                 // s
    private const double EngineLag = 0.6;                // s

    /// <summary>A drive.</summary>
    /// <param name="peakRpm">Speed of peak power, rpm; pulls end short of it.</param>
    /// <param name="wideDegrees">Wide open, degrees.</param>
    /// <param name="seed">Makes the drive another one with the same things in it.</param>
    /// <param name="warmUp">Seconds of warming up at the start; zero for an engine that is warm.</param>
    /// <returns>The moments.</returns>
    public static IReadOnlyList<DriveMoment> Make(double peakRpm, double wideDegrees, int seed, double warmUp = 40)
    {
        var random = new Random(seed);
        var moments = new List<DriveMoment>();
        var (degrees, rpm, wander, before) = (Stop, Idle, 0.0, Stop);
        foreach (var leg in Legs(peakRpm, wideDegrees, warmUp, random))
        {
            for (var t = 0.0; t < leg.Seconds; t += Step)
            {
                wander += -wander * Step / 0.8 + 0.5 * Math.Sqrt(Step) * Normal(random);
                var foot = leg.Degrees <= Stop ? 0 : 0.006 * leg.Degrees * wander;
                degrees += (leg.Degrees + foot - degrees) * (1 - Math.Exp(-Step / leg.FootLag));
                rpm += (leg.From + (leg.To - leg.From) * t / leg.Seconds + 9 * wander - rpm) * (1 - Math.Exp(-Step / EngineLag));
                var now = moments.Count * Step;
                var coolant = 358 + 1.5 * Math.Sin(now / 60) - Math.Max(0, 40 * (1 - now / Math.Max(1, warmUp)));
                moments.Add(new(now, rpm, Math.Min(degrees, wideDegrees), (degrees - before) / Step, leg.Gear * rpm, coolant));
                before = degrees;
            }
        }

        return moments;
    }

    private static IEnumerable<Leg> Legs(double peak, double wide, double warmUp, Random random)
    {
        double About(double value, double part = 0.05) => value * (1 + part * (2 * random.NextDouble() - 1));
        Leg Hold(double seconds, double degrees, double rpm, double gear) => new(About(seconds, 0.2), degrees, About(rpm), gear);

        yield return new(Math.Max(Step, warmUp), Stop, 1050, Idle + 40, 0, FootLag);
        yield return new(25, Stop, Idle, Idle, 0, FootLag);
        for (var lap = 0; lap < 3; lap++)
        {
            foreach (var (degrees, rpm) in new[] { (4.0, 1350.0), (6, 1700), (8.5, 2000), (11, 2350), (13.5, 2600) })
            {
                yield return Hold(6, About(degrees, 0.1), rpm, ThirdGear);
            }

            yield return new(5, Stop, 2400, 1500, ThirdGear, FootLag);
            foreach (var (degrees, rpm) in new[] { (16.5, 2300.0), (19, 2700), (24, 3000), (30, 3300), (38, 3600), (26, 2500) })
            {
                yield return Hold(7, About(degrees, 0.08), rpm, TopGear);
            }

            yield return new(4, Stop, 2900, 2000, ThirdGear, FootLag);
            yield return Hold(4, 7, 1800, ThirdGear);
            // A pull right through: a fast opening at first, then full load along the speeds.
            yield return new(9, wide, 1900, 0.97 * peak, ThirdGear, FootLag / 2);
            yield return new(6, Stop, 0.8 * peak, 1800, ThirdGear, FootLag / 2);
            yield return Hold(5, 9, 2000, ThirdGear);
            yield return new(8, 0.8 * wide, 2400, 0.8 * peak, TopGear, FootLag);
            yield return Hold(5, 12, 2200, TopGear);
            yield return Hold(6, 34, 2600, TopGear) with { FootLag = FootLag / 2 };
            yield return new(14, Stop, Idle, Idle, 0, FootLag);
        }
    }

    /// <summary>A draw from the normal distribution.</summary>
    internal static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private readonly record struct Leg(double Seconds, double Degrees, double From, double To, double Gear, double FootLag)
    {
        public Leg(double seconds, double degrees, double rpm, double gear)
            : this(seconds, degrees, rpm, rpm, gear, VirtualDrive.FootLag)
        {
        }
    }
}
