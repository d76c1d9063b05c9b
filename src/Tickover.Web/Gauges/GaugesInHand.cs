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

    private readonly ConcurrentDictionary<string, GaugeSetup> _dropped = new(StringComparer.Ordinal);
    private readonly ConcurrentQueue<string> _order = [];
    private readonly ConcurrentDictionary<(string Id, Manoeuvre? Road), Lazy<GaugeAnalysis>> _worked = [];
    private readonly Lazy<IReadOnlyDictionary<string, GaugeSetup>> _samples = new(() => Load(options.SamplesFolder));

    /// <summary>The samples by their names in the address.</summary>
    public IReadOnlyDictionary<string, GaugeSetup> Samples => _samples.Value;

    /// <summary>A gauge in hand on a road.</summary>
    /// <param name="id">Its name in the address.</param>
    /// <param name="road">A manoeuvre; none: the document's own road.</param>
    /// <returns>The analysis; null where it is not in hand.</returns>
    public GaugeAnalysis? Find(string id, Manoeuvre? road)
    {
        if (!_dropped.TryGetValue(id, out var setup) && !Samples.TryGetValue(id, out setup))
        {
            return null;
        }

        var driven = road is { } manoeuvre ? setup with { Road = GaugeRoad.Of(manoeuvre) } : setup;
        return _worked.GetOrAdd((id, road), _ => new Lazy<GaugeAnalysis>(() => GaugeAnalyst.Of(driven))).Value;
    }

    /// <summary>Takes a gauge into the hand.</summary>
    /// <param name="setup">The gauge.</param>
    /// <returns>Its name in the address.</returns>
    public string Take(GaugeSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var id = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(setup.Document)))[..HashLength];
        if (_dropped.TryAdd(id, setup))
        {
            _order.Enqueue(id);
        }

        while (_order.Count > Most && _order.TryDequeue(out var oldest))
        {
            _dropped.TryRemove(oldest, out _);
            foreach (var key in _worked.Keys.Where(k => string.Equals(k.Id, oldest, StringComparison.Ordinal)))
            {
                _worked.TryRemove(key, out _);
            }
        }

        return id;
    }

    private static Dictionary<string, GaugeSetup> Load(string? folder)
    {
        if (!Directory.Exists(folder))
        {
            return [];
        }

        var samples =
            from path in Directory.EnumerateFiles(folder, "*" + Ending).Order(StringComparer.Ordinal)
            let reading = GaugeDocument.Read(File.ReadAllText(path))
            where reading.Setup is not null
            select (Id: Path.GetFileName(path)[..^Ending.Length], reading.Setup);
        return samples.ToDictionary(s => s.Id, s => s.Setup, StringComparer.Ordinal);
    }
}
