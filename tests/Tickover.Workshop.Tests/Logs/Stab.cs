using Tickover.Workshop.Logs;

namespace Tickover.Workshop.Tests.Logs;

/// <summary>A made-up car that is stabbed open: its own film, its own shot, its own sensor, in steps of a millisecond.</summary>
/// <remarks>Written apart from the code it tests: nothing of the physics library is used, and the film is integrated by plain Euler steps.</remarks>
internal sealed record Stab
{
    private const double Step = 0.001;
    private const double OpensAt = 2;
    private const double StoichiometricRatio = 14.28;

    public double Settles { get; init; } = 0.3;

    public double FilmSeconds { get; init; } = 0.5;

    public double ShotGrams { get; init; }

    public double ShotDelay { get; init; }

    public double ShotSeconds { get; init; } = 0.4;

    public double LambdaBefore { get; init; } = 0.95;

    public double LambdaAfter { get; init; } = 0.88;

    public double OpeningSeconds { get; init; } = 0.15;

    public double Rate { get; init; } = 20;

    public double Noise { get; init; } = 0.003;

    public double Transport { get; init; } = 0.3;

    public double SensorLag { get; init; } = 0.08;

    public double Length { get; init; } = 8;

    public int Seed { get; init; } = 7;

    // 2.8 litres at 2,000 rpm and 1.2 kg/m³: air of a filling of one, in g/s.
    public static double AirGrams => 1.2 * 2.8e-3 * 2000 / 120 * 1000;

    /// <summary>Fuel the walls take in all, by the plain sum X τ Δ.</summary>
    public double OwedGrams => Settles * FilmSeconds * (Metered(1) - Metered(0));

    public TipInTrace ToTipInTrace()
    {
        var (film, sensor) = (Settles * FilmSeconds * Metered(0), LambdaBefore);
        var line = new Queue<double>(Enumerable.Repeat(LambdaBefore, (int)(Transport / Step)));
        var random = new Random(Seed);
        List<double> seconds = [], lambda = [], throttle = [], speed = [];
        for (var i = 0; i * Step < Length; i++)
        {
            var time = i * Step;
            var open = Math.Clamp((time - OpensAt) / OpeningSeconds, 0, 1);
            var metered = Metered(open);
            var delivered = (1 - Settles) * metered + film / FilmSeconds + Shot(time);
            film += Step * (Settles * metered - film / FilmSeconds);
            line.Enqueue(Air(open) / StoichiometricRatio / delivered);
            sensor += Step / SensorLag * (line.Dequeue() - sensor);
            if (i % (int)(1 / Rate / Step) == 0)
            {
                seconds.Add(time);
                lambda.Add(sensor + Noise * (random.NextDouble() + random.NextDouble() + random.NextDouble() - 1.5) * 2);
                throttle.Add(10 + 55 * open);
                speed.Add(2000);
            }
        }

        return new TipInTrace { Seconds = seconds, Lambda = lambda, ThrottleDegrees = throttle, SpeedRpm = speed };
    }

    private static double Air(double open) => AirGrams * (0.25 + 0.5 * open);

    private double Metered(double open) => Air(open) / StoichiometricRatio / (LambdaBefore + (LambdaAfter - LambdaBefore) * open);

    private double Shot(double time) => time >= OpensAt + ShotDelay && time < OpensAt + ShotDelay + ShotSeconds ? ShotGrams / ShotSeconds : 0;
}
