using Tickover.Workshop.Logs;

namespace Tickover.Bench.Road;

/// <summary>What a logger writes of a drive: rows of readings with noise, delay and drift.</summary>
internal sealed class VirtualLog
{
    private readonly double[][] _lambdas;

    private VirtualLog(DriveMoment[] rows, double[] manifold, double[][] lambdas, bool perBank) => (Rows, ManifoldPascals, _lambdas, PerBank) = (rows, manifold, lambdas, perBank);

    /// <summary>The rows, with the noise of speed and throttle.</summary>
    public IReadOnlyList<DriveMoment> Rows { get; }

    /// <summary>Pressure read, Pa.</summary>
    public IReadOnlyList<double> ManifoldPascals { get; }

    /// <summary>λ read by each probe.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Lambdas => _lambdas;

    /// <summary>Whether each bank has its probe.</summary>
    public bool PerBank { get; }

    /// <summary>Records a drive.</summary>
    /// <param name="drive">The drive.</param>
    /// <param name="truth">What the car does.</param>
    /// <param name="sensors">The instruments.</param>
    /// <param name="seed">Of the noise.</param>
    /// <returns>The log.</returns>
    public static VirtualLog Record(IReadOnlyList<DriveMoment> drive, RoadTruth truth, VirtualSensors sensors, int seed)
    {
        var random = new Random(seed);
        var every = Math.Max(1, (int)Math.Round(1 / (sensors.RowsPerSecond * VirtualDrive.Step)));
        var at = Enumerable.Range(0, drive.Count / every).Select(i => i * every).ToArray();
        var arrivals = Arrivals(drive, truth, sensors);
        int[] probes = sensors.ProbeForEachBank ? [.. Enumerable.Range(1, truth.Banks)] : [0];
        var lambdas = probes.Select(bank => Probe(drive, truth, sensors, arrivals, bank, random)).Select(all => at.Select(i => all[i]).ToArray()).ToArray();
        DriveMoment[] rows =
        [
            .. at.Select(i => drive[i] with
            {
                SpeedRpm = drive[i].SpeedRpm + sensors.SpeedNoise * VirtualDrive.Normal(random),
                Degrees = drive[i].Degrees + sensors.ThrottleNoise * VirtualDrive.Normal(random),
            }),
        ];
        double[] manifold = [.. at.Select(i => truth.ManifoldPascals(drive[i].SpeedRpm, drive[i].Degrees) + sensors.PressureOffset + sensors.PressureNoise * VirtualDrive.Normal(random))];
        return new VirtualLog(rows, manifold, lambdas, sensors.ProbeForEachBank);
    }

    /// <summary>The log as the reader would give it, for studies that need no file.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The log.</returns>
    public RoadLog ToRoadLog(string name) => new()
    {
        Name = name,
        Seconds = [.. Rows.Select(r => r.Seconds)],
        SpeedRpm = [.. Rows.Select(r => (float)r.SpeedRpm)],
        Throttle = [.. Rows.Select(r => (float)r.Degrees)],
        ThrottleScale = ThrottleScale.Degrees,
        ManifoldPascals = [.. ManifoldPascals.Select(p => (float)p)],
        CoolantKelvins = [.. Rows.Select(r => (float)r.CoolantKelvins)],
        RoadMetresPerSecond = [.. Rows.Select(r => (float)r.RoadMetresPerSecond)],
        Lambdas = [.. _lambdas.Select((l, i) => new LambdaChannel { Bank = PerBank ? i + 1 : null, Lambda = [.. l.Select(v => (float)v)], LeanLimit = 1.355f, RichLimit = 0.685f })],
    };

    // Which moment's gas stands at the probe in each: pushed there by the flow after it.
    private static int[] Arrivals(IReadOnlyList<DriveMoment> drive, RoadTruth truth, VirtualSensors sensors)
    {
        var flow = drive.Select(m => truth.AirKilogramsPerSecond(m.SpeedRpm, m.Degrees) * VirtualDrive.Step).ToArray();
        var (source, from, held) = (new int[drive.Count], 0, 0.0);
        for (var i = 0; i < source.Length; i++)
        {
            held += flow[i];
            while (from < i && held - flow[from] >= sensors.PipeKilograms)
            {
                held -= flow[from++];
            }

            source[i] = from;
        }

        return source;
    }

    private static double[] Probe(IReadOnlyList<DriveMoment> drive, RoadTruth truth, VirtualSensors sensors, int[] arrivals, int bank, Random random)
    {
        var born = Born(drive, truth, sensors, bank);
        var (read, shown, wander) = (new double[drive.Count], 1.0, 0.0);
        var offset = bank > 0 && bank <= sensors.LambdaOffsets.Count ? sensors.LambdaOffsets[bank - 1] : 0;
        for (var i = 0; i < read.Length; i++)
        {
            shown += (born[arrivals[i]] - shown) * (1 - Math.Exp(-VirtualDrive.Step / sensors.SensorLag));
            wander += -wander * VirtualDrive.Step / 0.7 + sensors.LambdaWander * Math.Sqrt(2 * VirtualDrive.Step / 0.7) * VirtualDrive.Normal(random);
            var restless = drive[arrivals[i]].SpeedRpm < 1100 ? 2 : 1;
            var value = shown + offset + restless * wander + sensors.LambdaDrift * i / read.Length + sensors.LambdaNoise * VirtualDrive.Normal(random);
            read[i] = Math.Clamp(value, sensors.Range.Richest, sensors.Range.Leanest);
        }

        return read;
    }

    // λ as it leaves the cylinders: the map, lean for a moment after a fast opening, air alone on the overrun.
    private static double[] Born(IReadOnlyList<DriveMoment> drive, RoadTruth truth, VirtualSensors sensors, int bank)
    {
        var (born, lean) = (new double[drive.Count], 0.0);
        for (var i = 0; i < born.Length; i++)
        {
            var m = drive[i];
            lean += (Math.Clamp(m.DegreesPerSecond / 150, 0, 1) - lean) * (m.DegreesPerSecond > 20 ? 0.5 : 1 - Math.Exp(-VirtualDrive.Step / 0.35));
            var overrun = m.Degrees < 2.2 && m.SpeedRpm > 1450;
            born[i] = overrun ? 1.6 : Math.Min(2, truth.Lambda(bank, m.SpeedRpm, m.Degrees)) * (1 + sensors.TipInLean * lean);
        }

        return born;
    }
}
