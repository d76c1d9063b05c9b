using System.Diagnostics;
using System.Globalization;
using Tickover.Physics.Sending;

namespace Tickover.Bench.Gauge;

/// <summary>How long one hour at 100 Hz takes, and what half and an eighth of the step change.</summary>
internal static class GaugeSpeed
{
    private const int Runs = 31;
    private const double AskedSeconds = 0.1;

    internal static RoadTrace Hour { get; } = RandomRoad.Drive(6, 3600, 0.01);

    internal static (double Left, double Right) Start { get; } = (15 * StudyTanks.Litre, 15 * StudyTanks.Litre);

    internal static int Run()
    {
        var (wall, processor, longest) = Time();
        Print($"One hour of 100 Hz, a moment kept every 0.1 s: median {wall * 1e3:F1} ms of wall, {processor * 1e3:F1} ms of processor, longest {longest * 1e3:F1} ms ({Runs} runs in a warm program).");
        foreach (var (every, name) in new[] { (0.01, "0.01"), (1.0, "1") })
        {
            var begin = Stopwatch.GetTimestamp();
            StudyTanks.Tern.Run(Hour, Start, every);
            Print($"  kept every {name} s: {Stopwatch.GetElapsedTime(begin).TotalMilliseconds:F1} ms");
        }

        Halves();
        Print($"Under {AskedSeconds} s: {(wall < AskedSeconds ? "yes" : "NO")}");
        return wall < AskedSeconds ? 0 : 1;
    }

    /// <summary>Medians in a warm program, s.</summary>
    internal static (double Wall, double Processor, double Longest) Time()
    {
        var (walls, processors) = (new double[Runs], new double[Runs]);
        using var self = Process.GetCurrentProcess();
        for (var k = -10; k < Runs; k++)
        {
            self.Refresh();
            var (begin, used) = (Stopwatch.GetTimestamp(), self.TotalProcessorTime);
            StudyTanks.Tern.Run(Hour, Start, 0.1);
            var time = Stopwatch.GetElapsedTime(begin).TotalSeconds;
            self.Refresh();
            if (k >= 0)
            {
                (walls[k], processors[k]) = (time, (self.TotalProcessorTime - used).TotalSeconds);
            }
        }

        Array.Sort(walls);
        Array.Sort(processors);
        return (walls[Runs / 2], processors[Runs / 2], walls[^1]);
    }

    private static void Halves()
    {
        var fine = Moments(0.01 / 16);
        Print($"Worst against a sixteenth of the step over the hour:   litres      flow L/min   level mm   needle");
        foreach (var part in new[] { 1, 2, 4 })
        {
            var run = Moments(0.01 / part);
            Print($"  step 10/{part} ms                                     {Worst(run, fine, m => m.LeftCubicMetres * 1e3),12:E2} {Worst(run, fine, m => m.FlowToRight * 6e4),12:E2} {Worst(run, fine, m => m.SenderLevelMetres * 1e3),10:E2} {Worst(run, fine, m => m.Needle),10:E2}");
        }
    }

    private static IReadOnlyList<SendingMoment> Moments(double step) => (StudyTanks.Tern with { StepSeconds = step }).Run(Hour, Start, 0.1).Moments;

    private static double Worst(IReadOnlyList<SendingMoment> a, IReadOnlyList<SendingMoment> b, Func<SendingMoment, double> value) =>
        a.Zip(b, (x, y) => Math.Abs(value(x) - value(y))).Max();

    private static void Print(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
