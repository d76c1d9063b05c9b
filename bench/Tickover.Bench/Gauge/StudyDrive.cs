using Tickover.Physics.Sending;

namespace Tickover.Bench.Gauge;

/// <summary>One invented drive: the truth of a car a little off its document, what is read of it, and the estimate.</summary>
internal static class StudyDrive
{
    private const double ReadSeconds = 0.5;
    private const double NeedleScatter = 0.005;
    private const double FinestNeedle = 0.005;             // the needle is read to half a hundredth of its scale
    private const double Litre = StudyTanks.Litre;

    internal static DriveResult Run(int seed)
    {
        var draw = new Random(seed);
        var truth = Truth(draw);
        var minutes = 15 + 45 * draw.NextDouble();
        var filled = draw.NextDouble() < 0.3;
        var total = (8 + (filled ? 10 : 36) * draw.NextDouble()) * Litre;
        var moments = new List<(SendingMoment Moment, bool Fill)>();
        var first = truth.Run(RandomRoad.Drive(seed, 60 * minutes * (filled ? 0.5 : 1), 0.01), truth.Settled(total), ReadSeconds).Moments;
        var road = new List<RoadSample>(RandomRoad.Drive(seed, 60 * minutes * (filled ? 0.5 : 1), 0.01).Samples);
        moments.AddRange(first.Select(m => (m, false)));
        if (filled)
        {
            Fill(draw, truth, seed, minutes, moments, road);
        }

        return Score(draw, truth, moments, road, filled);
    }

    // Two minutes at the pump, the left tank filled through its neck, then on.
    private static void Fill(Random draw, TwoTanks truth, int seed, double minutes, List<(SendingMoment Moment, bool Fill)> moments, List<RoadSample> road)
    {
        var last = moments[^1].Moment;
        var pumped = (8 + 12 * draw.NextDouble()) * Litre;
        var left = Math.Min(pumped, StudyTanks.Tern.Left.Table.CapacityCubicMetres - last.LeftCubicMetres);
        var right = Math.Min(pumped - left, StudyTanks.Tern.Right.Table.CapacityCubicMetres - last.RightCubicMetres);
        var still = RoadTrace.Standing(120);
        var on = still.Then(RandomRoad.Drive(seed + 5000, 30 * minutes, 0.01));
        var second = (truth with { }).Run(on, (last.LeftCubicMetres + left, last.RightCubicMetres + right), ReadSeconds, last.Needle).Moments;
        moments.AddRange(second.Skip(1).Select(m => (m with { Seconds = m.Seconds + last.Seconds }, m.Seconds <= 120)));
        road.AddRange(on.Samples.Skip(1));
    }

    private static TwoTanks Truth(Random draw)
    {
        double Off(double share) => 1 + share * Normal(draw);
        var t = StudyTanks.Tern;
        var pipe = t.Pipe with { BoreMetres = t.Pipe.BoreMetres * Off(0.02), LossToLeft = t.Pipe.LossToLeft * Math.Abs(Off(0.2)), LossToRight = t.Pipe.LossToRight * Math.Abs(Off(0.2)) };
        var place = t.Sender.Place with { LeftMetres = t.Sender.Place.LeftMetres + 0.003 * Normal(draw), AheadMetres = 0.003 * Normal(draw) };
        var arm = t.Sender.Arm with { RidesMetres = 0.0005 * Normal(draw) };
        return t with
        {
            Pipe = pipe,
            Fuel = t.Fuel with { ViscosityPascalSeconds = t.Fuel.ViscosityPascalSeconds * Math.Abs(Off(0.15)) },
            Sender = new TankSender(place, arm),
            Gauge = t.Gauge with { LagSeconds = t.Gauge.LagSeconds * Math.Max(0.6, Off(0.1)) },
            Draw = t.Draw! with { BurntCubicMetresPerSecond = t.Draw.BurntCubicMetresPerSecond * Math.Max(0.3, Off(0.35)) },
            Left = t.Left with { Damping = 0.03 + 0.05 * draw.NextDouble() },
            Right = t.Right with { Damping = 0.03 + 0.05 * draw.NextDouble() },
        };
    }

    private static DriveResult Score(Random draw, TwoTanks truth, List<(SendingMoment Moment, bool Fill)> moments, List<RoadSample> road, bool filled)
    {
        var (biasAhead, biasLeft) = (0.02 * Normal(draw), 0.02 * Normal(draw));
        var (samples, reads) = ((int)(ReadSeconds / 0.01), new List<GaugeReading>());
        for (var k = 0; k < moments.Count; k++)
        {
            var from = Math.Max(0, (k - 1) * samples);
            var part = road.GetRange(from, k == 0 ? 1 : samples);
            var mean = new RoadSample(part.Average(s => s.AheadMetresPerSecondSquared) + biasAhead, part.Average(s => s.LeftMetresPerSecondSquared) + biasLeft, part.Average(s => s.UpMetresPerSecondSquared));
            var needle = FinestNeedle * Math.Round((moments[k].Moment.Needle + NeedleScatter * Normal(draw)) / FinestNeedle);
            reads.Add(new GaugeReading(moments[k].Moment.Seconds, needle, mean));
        }

        var estimator = new FuelEstimator(StudyTanks.Tern, new EstimatorSettings());
        return Judge(moments, reads, estimator.Estimate(reads), estimator.Scale, filled);
    }

    private static DriveResult Judge(
        List<(SendingMoment Moment, bool Fill)> moments, List<GaugeReading> reads, IReadOnlyList<FuelEstimate> estimates, NeedleScale scale, bool filled)
    {
        // The first two minutes and the time at the pump are not judged: no method knows the past of a needle before it is switched on.
        var judged = Enumerable.Range(0, moments.Count).Where(k => moments[k].Moment.Seconds > 120 && !moments[k].Fill).ToArray();
        double Truth(int k) => moments[k].Moment.TotalCubicMetres / Litre;
        var raw = reads.Select(r => scale.CubicMetresAt(r.Needle) / Litre).ToArray();
        double Rms(IEnumerable<double> errors) => Math.Sqrt(errors.Select(e => e * e).DefaultIfEmpty(0).Average());
        double Mean(int k) => raw[Math.Max(0, k - 120)..(k + 1)].Average();
        return new DriveResult(
            Rms(judged.Select(k => raw[k] - Truth(k))),
            Rms(judged.Where(k => Math.Abs(reads[k].Road.LeftMetresPerSecondSquared) < 0.5 && Math.Abs(reads[k].Road.AheadMetresPerSecondSquared) < 0.5).Select(k => raw[k] - Truth(k))),
            Rms(judged.Select(k => Mean(k) - Truth(k))),
            Rms(judged.Select(k => estimates[k].CubicMetres / Litre - Truth(k))),
            judged.Average(k => 0.5 * (estimates[k].HighCubicMetres - estimates[k].LowCubicMetres) / Litre),
            judged.Count(k => estimates[k].LowCubicMetres / Litre <= Truth(k) && Truth(k) <= estimates[k].HighCubicMetres / Litre),
            judged.Length,
            filled);
    }

    private static double Normal(Random draw) => Math.Sqrt(-2 * Math.Log(1 - draw.NextDouble())) * Math.Cos(2 * Math.PI * draw.NextDouble());
}
