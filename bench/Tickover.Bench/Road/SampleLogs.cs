using System.Globalization;
using System.Text;

namespace Tickover.Bench.Road;

/// <summary>Writes the invented logs in samples/: the cars of the samples as they would run with hidden figures of their own.</summary>
internal static class SampleLogs
{
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    /// <summary>Writes them.</summary>
    /// <param name="folder">Where to.</param>
    /// <returns>Exit code.</returns>
    public static int Write(string folder)
    {
        Put(folder, "tern-road.csv", Encoding.UTF8.GetBytes(Plain()));
        Put(folder, "osprey-road.csv", Encoding.Latin1.GetBytes(Messy()));
        return 0;
    }

    private static void Put(string folder, string name, byte[] bytes)
    {
        File.WriteAllBytes(Path.Combine(folder, name), bytes);
        Console.WriteLine($"{name}: {bytes.Length / 1024.0:0} kB");
    }

    // One probe, comma and point, λ, kPa absolute: what a simple logger writes. Beginning with a sensor that warms up.
    private static string Plain()
    {
        var truth = RoadTruth.Of(Samples.Change(
            Samples.Read("tern-2800"),
            ("barrels.auxiliaryGain", "2.2"), ("barrels.screwTurns", "2.5"), ("barrels.slip", "1.5"), ("barrels.floatLevel", "5.4 mm")));
        var log = VirtualLog.Record(VirtualDrive.Make(truth.PeakRpm, truth.WideDegrees, 11), truth, new VirtualSensors(), 12);
        var text = new StringBuilder("time_s,rpm,tps_pct,map_kpa,lambda,ect_c,speed_kmh\n");
        for (var i = 0; i < log.Rows.Count; i++)
        {
            var row = log.Rows[i];
            var lambda = row.Seconds < 18 ? 1 : log.Lambdas[0][i];
            text.Append(C, $"{row.Seconds:0.0},{row.SpeedRpm:0},{Travel(row.Degrees, truth):0.0},{log.ManifoldPascals[i] / 1000:0.0},{lambda:0.000},{row.CoolantKelvins - 273.15:0},{3.6 * row.RoadMetresPerSecond:0.0}\n");
        }

        return text.ToString();
    }

    // A probe a bank as AFR, semicolons and decimal commas, mmHg of depression, clock that begins again, rows that are none.
    private static string Messy()
    {
        var truth = RoadTruth.Of(Samples.Change(
            Samples.Read("osprey-v8"),
            ("barrels.auxiliaryGain", "2.1"), ("barrels.screwTurns", "2.2"), ("barrels.floatLevel", "4.2 mm")));
        var sensors = new VirtualSensors { ProbeForEachBank = true, LambdaOffsets = [0.006, -0.008], PipeKilograms = 0.02, LambdaNoise = 0.008 };
        var log = VirtualLog.Record(VirtualDrive.Make(truth.PeakRpm, truth.WideDegrees, 21), truth, sensors, 22);
        var text = new StringBuilder("Saltmarsh Motor House;road log 7\r\n\"Car\";Osprey V8, mains 150\r\nDate;14.05.2026\r\n# dry, 18 \u00B0C, hood up\r\n\r\n");
        const string headings = "Time;Engine Speed;Throttle;Vacuum;AFR left;AFR right;Water;Oil P;Note\r\nms;1/min;%;mmHg;:1;:1;\u00B0C;bar;\r\n";
        text.Append(headings);
        for (var i = 0; i < log.Rows.Count; i++)
        {
            text.Append(Row(log, truth, i).Replace('.', ','));
            text.Append(i switch { 1900 => "\r\n# fuel smell at the lights\r\n", 3100 => "\r\n" + headings, 4000 => "\r\n\r\n;;;;;;;;\r\n", _ => "\r\n" });
        }

        return text.ToString();
    }

    private static string Row(VirtualLog log, RoadTruth truth, int i)
    {
        var row = log.Rows[i];
        // The logger was switched off and on once: its clock begins again.
        var time = 1000 * (row.Seconds < 310 ? row.Seconds : row.Seconds - 310) + 40;
        var rpm = i % 977 == 500 ? 9999 : row.SpeedRpm;
        var vacuum = (101_325 - 120 - log.ManifoldPascals[i]) / 133.3224;
        string Afr(int bank) => row.Seconds < 24 ? "---" : (14.7 * log.Lambdas[bank][i]).ToString("0.00", C);
        return string.Create(C, $"{time:0};{rpm:0};{Travel(row.Degrees, truth):0.0};{vacuum:0};{Afr(0)};{Afr(1)};{row.CoolantKelvins - 273.15:0.0};{3.1 + 0.0002 * row.SpeedRpm:0.0};{(i == 2500 ? "hill" : string.Empty)}");
    }

    // A potentiometer that shows 4 % shut and 96 % open.
    private static double Travel(double degrees, RoadTruth truth) => 4 + 92 * (degrees - 1.6) / (truth.WideDegrees - 1.6);
}
