using System.Diagnostics;
using System.Globalization;
using System.Text;
using Tickover.Instruments.Logs;

namespace Tickover.Bench.Road;

/// <summary>How long a big log takes to read, and how much memory.</summary>
internal static class LogSpeed
{
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    /// <summary>Writes a log to a temporary file and reads it three times: once with points and commas, once with semicolons and decimal commas.</summary>
    /// <param name="megabytes">Its size.</param>
    /// <returns>Exit code.</returns>
    public static int Run(int megabytes)
    {
        foreach (var messy in new[] { false, true })
        {
            var path = Path.GetTempFileName();
            try
            {
                Write(path, megabytes, messy);
                Measure(path, messy);
            }
            finally
            {
                File.Delete(path);
            }
        }

        return 0;
    }

    private static void Measure(string path, bool messy)
    {
        var times = new List<double>();
        LogReading? reading = null;
        for (var i = 0; i < 3; i++)
        {
            reading = null;
            GC.Collect();
            using var stream = File.OpenRead(path);
            var watch = Stopwatch.StartNew();
            reading = LogReader.Read(stream);
            times.Add(watch.Elapsed.TotalSeconds);
        }

        using var process = Process.GetCurrentProcess();
        Console.WriteLine(string.Create(C, $"{(messy ? "semicolons, decimal commas" : "commas, points")}: {new FileInfo(path).Length / 1e6:0} MB, {reading!.Rows:N0} rows, {reading.RowsKept:N0} used; {string.Join(", ", times.Select(t => t.ToString("0.00", C)))} s; peak of the process {process.PeakWorkingSet64 / 1e6:0} MB; {reading.Refusal}"));
    }

    private static void Write(string path, int megabytes, bool messy)
    {
        using var writer = new StreamWriter(path, false, new UTF8Encoding(false), 1 << 16);
        writer.Write(messy ? "Time;RPM;TPS;MAP;Lambda;ECT;IAT;Batt;Speed;Note\ns;1/min;%;kPa;;\u00B0C;\u00B0C;V;km/h;\n" : "time,rpm,tps,map,lambda,ect,iat,batt,speed,note\n");
        for (var i = 0L; writer.BaseStream.Position < megabytes * 1_000_000L; i++)
        {
            var t = i / 25.0;
            var s = Math.Sin(t / 7);
            var line = string.Create(C, $"{t:0.00};{2500 + 1500 * s:0};{35 + 32 * s:0.0};{62 + 33 * s:0.0};{0.95 + 0.07 * Math.Cos(t / 3):0.000};{85 + s:0};{24 - s:0};{13.8 + 0.1 * s:0.00};{80 + 40 * s:0.0};");
            writer.WriteLine(messy ? line.Replace('.', ',') : line.Replace(';', ','));
        }
    }
}
