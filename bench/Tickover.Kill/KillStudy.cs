using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Tickover.Records;
using Tickover.Records.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Kill;

/// <summary>Kills a writer in the middle of its work over and over, and looks each time at what the record holds.</summary>
public static class KillStudy
{
    private const int ShortestMilliseconds = 20;
    private const int LongestMilliseconds = 600;

    /// <summary>Runs the study.</summary>
    /// <param name="folder">Folder of the record; made here.</param>
    /// <param name="kills">How often.</param>
    /// <param name="seed">Decides when each kill comes.</param>
    public static async Task<KillResult> RunAsync(string folder, int kills, int seed)
    {
        var random = new Random(seed);
        var (acknowledged, lost, half, gaps, silent, before) = (0L, 0L, 0L, 0L, 0L, 0L);
        var healthy = new List<double>();
        for (var k = 0; k < kills; k++)
        {
            var acks = await KillOneAsync(folder, TimeSpan.FromMilliseconds(random.Next(ShortestMilliseconds, LongestMilliseconds)));
            var watch = Stopwatch.StartNew();
            using var store = await RecordOpening.OpenAsync(new RecordPlace(folder), Beginning.Expected, TimeProvider.System);
            await store.SizeAsync();
            var probe = await store.KeepAsync(new Act { Key = Guid.NewGuid(), Items = [new Owner { Name = "Probe" }, new Instrument { Name = "Probe" }], Words = "probe" });
            healthy.Add(watch.Elapsed.TotalSeconds);
            var lines = (await store.JournalAsync(null, (int)(probe.Number - before))).ToDictionary(l => l.Number);
            acknowledged += acks.Count;
            lost += acks.Count(a => !lines.TryGetValue(a.Key, out var line) || !string.Equals(line.Words, a.Value, StringComparison.Ordinal));
            half += lines.Values.Count(l => l.Changes.Count != 2);
            gaps += probe.Number - before - lines.Count;
            silent += lines.Count - 1 - acks.Count;
            before = probe.Number;
        }

        return new KillResult(kills, acknowledged, lost + await MissingItemsAsync(folder, before), half, gaps, silent, healthy);
    }

    // Each act made one owner and one instrument: at the end there are as many of each as acts.
    private static async Task<long> MissingItemsAsync(string folder, long acts)
    {
        using var store = await RecordOpening.OpenAsync(new RecordPlace(folder), Beginning.Expected, TimeProvider.System);
        return (2 * acts) - (await store.AllAsync<Owner>()).Count - (await store.AllAsync<Instrument>()).Count;
    }

    private static async Task<ConcurrentDictionary<long, string>> KillOneAsync(string folder, TimeSpan after)
    {
        using var writer = Process.Start(new ProcessStartInfo("dotnet", [typeof(KillStudy).Assembly.Location, "writer", folder]) { RedirectStandardOutput = true, UseShellExecute = false })
            ?? throw new InvalidOperationException("The writer did not start.");
        var acks = new ConcurrentDictionary<long, string>();
        var first = new TaskCompletionSource();
        var reading = Task.Run(async () =>
        {
            while (await writer.StandardOutput.ReadLineAsync() is { } line)
            {
                // The last line may be cut by the kill: then nobody was told.
                if (line.Split(' ') is [var number, { Length: 32 } key])
                {
                    acks[long.Parse(number, CultureInfo.InvariantCulture)] = key;
                    first.TrySetResult();
                }
            }

            first.TrySetException(new InvalidOperationException("The writer ended before it kept anything."));
        });
        await first.Task;
        await Task.Delay(after);
        writer.Kill();
        await writer.WaitForExitAsync();
        await reading;
        return acks;
    }
}
