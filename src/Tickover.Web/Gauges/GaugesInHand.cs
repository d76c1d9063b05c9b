using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Tickover.Workshop.Gauges;

namespace Tickover.Web.Gauges;

/// <summary>The sample gauges, and those dropped last, while the server runs; the same document has the same address again.</summary>
/// <param name="options">Names the folder of the samples.</param>
public sealed class GaugesInHand(WebAppOptions options)
{
    private const string Ending = ".gauge.json";
    private const int Most = 32;
    private const int HashLength = 12;

    private readonly ConcurrentDictionary<string, GaugeInHand> _dropped = new(StringComparer.Ordinal);
    private readonly ConcurrentQueue<string> _order = [];
    private readonly Lazy<Dictionary<string, GaugeInHand>> _samples = new(() => Load(options.SamplesFolder));

    /// <summary>The samples.</summary>
    public IReadOnlyCollection<GaugeInHand> Samples => _samples.Value.Values;

    /// <summary>A story in hand.</summary>
    /// <param name="id">Its name in the address.</param>
    /// <returns>The story; null where it is not in hand.</returns>
    public GaugeInHand? Find(string id) => _samples.Value.GetValueOrDefault(id) ?? _dropped.GetValueOrDefault(id);

    /// <summary>Takes a story into the hand.</summary>
    /// <param name="story">The story.</param>
    /// <returns>It, with its address.</returns>
    public GaugeInHand Take(GaugeStory story)
    {
        ArgumentNullException.ThrowIfNull(story);
        var id = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(story.Document)))[..HashLength];
        if (_dropped.TryAdd(id, new GaugeInHand(id, story)))
        {
            _order.Enqueue(id);
            while (_order.Count > Most && _order.TryDequeue(out var oldest))
            {
                _dropped.TryRemove(oldest, out _);
            }
        }

        return _dropped.GetValueOrDefault(id) ?? new GaugeInHand(id, story);
    }

    private static Dictionary<string, GaugeInHand> Load(string? folder)
    {
        if (!Directory.Exists(folder))
        {
            return [];
        }

        var samples =
            from path in Directory.EnumerateFiles(folder, "*" + Ending).Order(StringComparer.Ordinal)
            let reading = GaugeDocument.Read(File.ReadAllText(path))
            where reading.Story is not null
            select new GaugeInHand(Path.GetFileName(path)[..^Ending.Length], reading.Story!);
        return samples.ToDictionary(s => s.Id, StringComparer.Ordinal);
    }
}
