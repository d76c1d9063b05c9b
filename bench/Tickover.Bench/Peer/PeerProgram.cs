using System.Diagnostics;
using System.Globalization;

namespace Tickover.Bench.Peer;

/// <summary>Runs the C program and reads its answers.</summary>
internal sealed class PeerProgram(string executable, string input, Func<PeerTolerances, string> write)
{
    /// <summary>One run of the program.</summary>
    /// <param name="Points">Its answers.</param>
    /// <param name="Seconds">Time for all points, measured in the program, median of its runs.</param>
    /// <param name="ProcessorSeconds">The same by the processor's clock.</param>
    internal sealed record Answer(List<PeerPoint> Points, double Seconds, double ProcessorSeconds);

    internal Answer Run(PeerTolerances tolerances, int runs)
    {
        File.WriteAllText(input, write(tolerances));
        var start = new ProcessStartInfo(executable) { RedirectStandardOutput = true, UseShellExecute = false };
        start.ArgumentList.Add(input);
        start.ArgumentList.Add(runs.ToString(CultureInfo.InvariantCulture));
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{executable} does not start.");
        var lines = process.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{executable} ended with {process.ExitCode}.");
        }

        var seconds = Numbers(lines.Single(l => l.StartsWith("seconds ", StringComparison.Ordinal)));
        return new Answer([.. lines.Where(l => l.StartsWith("point ", StringComparison.Ordinal)).Select(l => Point(Numbers(l)))], seconds[0], seconds[1]);
    }

    private static double[] Numbers(string line) =>
        [.. line.Split(' ').Skip(1).Select(t => double.Parse(t, CultureInfo.InvariantCulture))];

    // Order as printed at the end of bench/peer/main.c.
    private static PeerPoint Point(double[] v) => new()
    {
        Rpm = v[0],
        Degrees = v[1],
        Air = v[2],
        Main = v[3],
        Idle = v[4] + v[5],
        Pump = v[6],
        Settled = v[10] > 0,
        Cycles = (int)v[11],
    };
}
