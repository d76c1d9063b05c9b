using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Tickover.Workshop.Linkages;

namespace Tickover.Web.Linkages;

/// <summary>The sample linkages, and those dropped last, while the server runs; the same document has the same address again.</summary>
/// <param name="options">Names the folder of the samples.</param>
public sealed class LinkagesInHand(WebAppOptions options)
{
    private const string Ending = ".linkage.json";
    private const int Most = 32;
    private const int HashLength = 12;

    private readonly ConcurrentDictionary<string, Lazy<LinkageInHand>> _known = new(StringComparer.Ordinal);
    private readonly ConcurrentQueue<string> _dropped = [];
    private readonly Lazy<IReadOnlyDictionary<string, Linkage>> _samples = new(() => Load(options.SamplesFolder));

    /// <summary>The samples by their names in the address.</summary>
    public IReadOnlyDictionary<string, Linkage> Samples => _samples.Value;

    /// <summary>A linkage in hand.</summary>
    /// <param name="id">Its name in the address.</param>
    /// <returns>The linkage; null where it is not in hand.</returns>
    public LinkageInHand? Find(string id) =>
        _known.TryGetValue(id, out var known) ? known.Value
        : Samples.TryGetValue(id, out var sample) ? Keep(id, sample)
        : null;

    /// <summary>Takes a linkage into the hand.</summary>
    /// <param name="linkage">The linkage.</param>
    /// <returns>It, with its address.</returns>
    public LinkageInHand Take(Linkage linkage)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        var id = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(linkage.Document)))[..HashLength];
        if (!_known.ContainsKey(id))
        {
            _dropped.Enqueue(id);
            while (_dropped.Count > Most && _dropped.TryDequeue(out var oldest))
            {
                _known.TryRemove(oldest, out _);
            }
        }

        return Keep(id, linkage);
    }

    private LinkageInHand Keep(string id, Linkage linkage) =>
        _known.GetOrAdd(id, _ => new Lazy<LinkageInHand>(() => new LinkageInHand(id, LinkageAnalyst.Of(linkage)))).Value;

    private static Dictionary<string, Linkage> Load(string? folder)
    {
        if (!Directory.Exists(folder))
        {
            return [];
        }

        var samples =
            from path in Directory.EnumerateFiles(folder, "*" + Ending).Order(StringComparer.Ordinal)
            let reading = LinkageDocument.Read(File.ReadAllText(path))
            where reading.Linkage is not null
            select (Id: Path.GetFileName(path)[..^Ending.Length], reading.Linkage);
        return samples.ToDictionary(s => s.Id, s => s.Linkage, StringComparer.Ordinal);
    }
}
