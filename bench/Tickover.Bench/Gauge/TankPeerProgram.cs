using System.Diagnostics;
using System.Globalization;

namespace Tickover.Bench.Gauge;

/// <summary>Runs bench/peer/tanks.c and reads its answers.</summary>
internal sealed class TankPeerProgram(string executable, string input)
{
    /// <summary>One run.</summary>
    /// <param name="Method">CVODE's method and tolerance.</param>
    /// <param name="Moments">Left tank in m³, flow in m³/s, needle; at every moment kept.</param>
    /// <param name="Seconds">The processor's time, best of its runs.</param>
    /// <param name="Calls">How often the equations were worked out.</param>
    internal sealed record Answer((string Name, double Tolerance) Method, List<(double Left, double Flow, double Needle)> Moments, double Seconds, long Calls);

    internal Answer Run(string method, double tolerance, int runs)
    {
        var start = new ProcessStartInfo(executable) { RedirectStandardOutput = true, UseShellExecute = false };
        string[] words = [input, tolerance.ToString("R", CultureInfo.InvariantCulture), runs.ToString(CultureInfo.InvariantCulture), method];
        foreach (var word in words)
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{executable} does not start.");
        var lines = process.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{executable} ended with {process.ExitCode} with {method} at {tolerance}.");
        }

        var times = Numbers(lines[^1]);
        return new Answer((method, tolerance), [.. lines[..^1].Select(l => Numbers(l)).Select(v => (v[0], v[1], v[2]))], times[0], (long)times[1]);
    }

    private static double[] Numbers(string line) => [.. line.Split(' ').Skip(1).Select(t => double.Parse(t, CultureInfo.InvariantCulture))];
}
