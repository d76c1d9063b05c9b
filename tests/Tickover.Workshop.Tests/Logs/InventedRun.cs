using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;

namespace Tickover.Workshop.Tests.Logs;

/// <summary>An invented run with everything known: a λ that is a formula of speed and opening, a delay that is a + b over the air, noise by seed.</summary>
internal sealed class InventedRun
{
    public const double Fixed = 0.2;                     // s
    public const double Pipe = 0.016;                    // kg
    public const double Stop = 1.5;                      // degrees
    public const double Open = 80;                       // in the plan: wide open, whatever the car makes of it

    private static readonly (double Seconds, double Degrees, double Rpm, double ToRpm, double Road)[] Plan =
    [
        (20, 1.5, 880, 880, 0), (8, 7, 1700, 1700, 12), (0.4, 25, 1750, 1800, 13), (8, 25, 2300, 2300, 18), (7, 9, 2000, 2000, 16), (9, 17, 2500, 2500, 20), (6, 1.5, 2400, 1500, 16),
        (8, 11, 1900, 1900, 15), (7, 80, 2200, 5200, 30), (5, 1.5, 4200, 2000, 24), (8, 30, 2800, 2800, 23), (7, 6, 1500, 1500, 11), (9, 36, 3200, 3200, 27), (7, 80, 2400, 5400, 32), (8, 22, 2600, 2600, 21), (18, 1.5, 860, 860, 0),
    ];

    public double Noise { get; init; } = 0.006;

    public int Laps { get; init; } = 3;

    public int Seed { get; init; } = 4;

    public double Coolant { get; init; } = 357;

    public Func<double, double, double> Lambda { get; init; } = Formula;

    public IReadOnlyList<(int? Bank, double Offset)> Sensors { get; init; } = [(null, 0)];

    public bool HasThrottle { get; init; } = true;

    /// <summary>Any smooth formula will do: leaner in progression, richer at full load.</summary>
    public static double Formula(double rpm, double degrees) =>
        0.94 + 0.10 * Math.Exp(-Math.Pow((degrees - 12) / 6, 2)) - 0.09 * Math.Clamp((degrees - 40) / 35, 0, 1) + 0.00001 * (rpm - 2500);

    public RoadLog Make(Car car)
    {
        const double step = 0.05;
        var random = new Random(Seed);
        var (air, truth, rows) = (new EngineAir(car), new List<double>(), new List<(double T, double Rpm, double Deg, double Map, double Road)>());
        var wide = 90 - car.Barrels[0].Figures.Si("barrel.closedAngle") * 180 / Math.PI;
        double degrees = Stop, rpm = 880;
        foreach (var (seconds, planned, from, to, road) in Enumerable.Repeat(Plan, Laps).SelectMany(p => p))
        {
            var target = planned is Open ? wide : planned;
            for (var t = 0.0; t < seconds; t += step)
            {
                degrees += (target - degrees) * (1 - Math.Exp(-step / 0.1));
                rpm += (from + (to - from) * t / seconds - rpm) * (1 - Math.Exp(-step / 0.3));
                rows.Add((rows.Count * step, rpm, degrees, 32_000 + 68_000 * Math.Pow(Math.Clamp(degrees / 45, 0, 1), 0.7), road));
                truth.Add(Lambda(rpm, degrees));
            }
        }

        float[] Sensed(double offset) => [.. Arrivals(rows, air, step).Select(i => (float)(truth[i] + offset + Noise * Normal(random)))];
        return new RoadLog
        {
            Name = "invented",
            Seconds = [.. rows.Select(r => r.T)],
            SpeedRpm = [.. rows.Select(r => (float)(r.Rpm + 4 * Normal(random)))],
            Throttle = HasThrottle ? [.. rows.Select(r => (float)(3 + 92 * (r.Deg - Stop) / (wide - Stop) + 0.1 * Normal(random)))] : null,
            ManifoldPascals = [.. rows.Select(r => (float)(r.Map + 150 * Normal(random)))],
            CoolantKelvins = [.. rows.Select(_ => (float)Coolant)],
            RoadMetresPerSecond = [.. rows.Select(r => (float)r.Road)],
            Lambdas = [.. Sensors.Select(s => new LambdaChannel { Bank = s.Bank, Lambda = Sensed(s.Offset) })],
        };
    }

    // Which row's gas stands at the sensor in each row: what left at t arrives once the mass in the pipe was pushed on after it, and the sensor has followed.
    private static int[] Arrivals(List<(double T, double Rpm, double Deg, double Map, double Road)> rows, EngineAir air, double step)
    {
        var at = new int[rows.Count];
        for (var i = 0; i < rows.Count; i++)
        {
            var (to, pushed) = (i, 0.0);
            while (to < rows.Count && pushed < Pipe)
            {
                pushed += air.At(rows[to].Rpm, rows[to].Deg, rows[to].Map) * step;
                to++;
            }

            for (var k = to + (int)Math.Round(Fixed / step); k < Math.Min(at.Length, to + 100); k++)
            {
                at[k] = i;
            }
        }

        return at;
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
