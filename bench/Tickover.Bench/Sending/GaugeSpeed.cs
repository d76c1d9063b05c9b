using System.Diagnostics;
using System.Globalization;
using System.Text;
using Tickover.Physics.Sending;

namespace Tickover.Bench.Sending;

/// <summary>One hour of road at 100 Hz through the tanks: time, allocation, and the same equations on CVODE beside it.</summary>
internal static class GaugeSpeed
{
    private const double AskedSeconds = 0.1;
    private const double AskedRatio = 20;
    private const int Runs = 11;

    private static readonly RoadTrace Hour = SyntheticDrive.Make(new Random(7), 3600);

    internal static int Run()
    {
        var (seconds, processor) = Time();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var moments = Once();
        var bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        Print($"{Hour.Count} samples, {Hour.Seconds / 3600:F2} h: median {1000 * seconds:F1} ms (processor {1000 * processor:F1} ms), asked {1000 * AskedSeconds:F0} ms; {bytes / 1024} KiB, all of it the {moments.Count} moments given back");
        return seconds <= AskedSeconds ? 0 : 1;
    }

    internal static int Peer(string executable, string input)
    {
        File.WriteAllText(input, Input());
        var ours = Once();
        var (_, processor) = Time();
        var best = Ask(executable, input, 1e-10, 1).Volumes;
        var error = Worst(Volumes(ours), best);
        Print($"Ours: worst error of the left tank {1e6 * error:F2} mL, {1000 * processor:F1} ms of one processor");
        var ratio = double.NaN;
        foreach (var tolerance in new[] { 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8 })
        {
            var (volumes, seconds) = Ask(executable, input, tolerance, 3);
            var theirs = Worst(volumes, best);
            Print($"CVODE at {tolerance:E0}: worst error {1e6 * theirs:F2} mL, {1000 * seconds:F0} ms of one processor, ratio {seconds / processor:F1}");
            if (double.IsNaN(ratio) && theirs <= error)
            {
                ratio = seconds / processor;             // the loosest that is no worse than ours
            }
        }

        Print($"At the loosest tolerance that is no worse than ours: ratio {ratio:F1}, asked {AskedRatio}");
        return ratio >= AskedRatio ? 0 : 1;
    }

    private static TankMoments Once() => GaugeCar.Pair.Run(Hour, (0.012, 0.012), GaugeCar.Every);

    private static double[] Volumes(TankMoments m) => [.. m.LeftVolumes];

    private static (double Wall, double Processor) Time()
    {
        Once();
        Once();
        var (walls, processors) = (new double[Runs], new double[Runs]);
        using var own = Process.GetCurrentProcess();
        for (var i = 0; i < Runs; i++)
        {
            var watch = Stopwatch.StartNew();
            own.Refresh();
            var start = own.TotalProcessorTime;
            Once();
            own.Refresh();
            (walls[i], processors[i]) = (watch.Elapsed.TotalSeconds, (own.TotalProcessorTime - start).TotalSeconds);
        }

        Array.Sort(walls);
        Array.Sort(processors);
        return (walls[Runs / 2], processors[Runs / 2]);
    }

    private static double Worst(double[] a, double[] b) => a.Zip(b, (x, y) => Math.Abs(x - y)).Max();

    private static (double[] Volumes, double Seconds) Ask(string executable, string input, double tolerance, int runs)
    {
        var start = new ProcessStartInfo(executable) { RedirectStandardOutput = true, UseShellExecute = false };
        foreach (var word in new[] { input, tolerance.ToString("R", CultureInfo.InvariantCulture), runs.ToString(CultureInfo.InvariantCulture) })
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{executable} does not start.");
        var lines = process.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{executable} ended with {process.ExitCode}.");
        }

        return ([.. lines[..^1].Select(l => double.Parse(l, CultureInfo.InvariantCulture))], double.Parse(lines[^1], CultureInfo.InvariantCulture));
    }

    // Order as read in bench/peer/tanks.c.
    private static string Input()
    {
        var pair = GaugeCar.Pair;
        var fitting = pair.Fitting!;
        var text = new StringBuilder();
        void Line(params IEnumerable<double> values) => text.AppendJoin(' ', values.Select(v => v.ToString("R", CultureInfo.InvariantCulture))).Append('\n');
        Line(pair.Left.Table.CapacityCubicMetres, LevelTable.Cells, LevelTable.NeckAreaSquareMetres);
        Line(pair.Left.Table.Levels);
        Line(pair.Left.WidthMetres, pair.Left.LengthMetres, pair.Left.LeftMetres, pair.Left.SloshDamping);
        Line(pair.Pipe.BoreMetres, pair.Pipe.LengthMetres, pair.Pipe.EndCorrectionBores, pair.Pipe.LossToRight, pair.Pipe.RoughnessMetres);
        Line(pair.Viscosity, pair.Gravity, pair.Draw.BurntCubicMetresPerSecond, pair.Draw.PickUp.HeightMetres);
        var (sender, gauge) = (fitting.First, fitting.Gauge);
        Line(sender.Place.LeftMetres, sender.Place.AheadMetres, sender.Arm.PivotMetres, sender.Arm.LengthMetres, sender.Arm.LowestMetres, sender.Arm.HighestMetres, sender.Arm.Family.EmptyOhms, sender.Arm.Family.FullOhms);
        Line(gauge.GaugeOhms, gauge.SupplyVolts, gauge.TimeConstantSeconds);
        Line(0.012, 0.012, Hour.StepSeconds, Hour.Count, GaugeCar.Every);
        var (ahead, left) = (Hour.Ahead.ToArray(), Hour.Left.ToArray());
        Line(ahead);
        Line(left);
        return text.ToString();
    }

    private static void Print(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
