using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Worksheets;

/// <summary>Sample documents of a kind, and those dropped last, while the server runs; the same document has the same address again.</summary>
/// <typeparam name="T">What a document says, worked out.</typeparam>
/// <param name="folder">Folder of the samples; null where there are none.</param>
/// <param name="ending">How their files' names end.</param>
/// <param name="read">Reads a document: what it says, or what is wrong with it.</param>
public sealed class DocumentShelf<T>(string? folder, string ending, Func<string, (T? Said, IReadOnlyList<Fault> Faults)> read)
    where T : class
{
    private const int Most = 32;
    private const int HashLength = 12;

    private readonly ConcurrentDictionary<string, T> _dropped = new(StringComparer.Ordinal);
    private readonly ConcurrentQueue<string> _order = [];
    private readonly Lazy<IReadOnlyDictionary<string, T>> _samples = new(() => Load(folder, ending, read));

    /// <summary>The samples by their names in the address.</summary>
    public IReadOnlyDictionary<string, T> Samples => _samples.Value;

    /// <summary>What lies at an address.</summary>
    /// <param name="id">The name in the address.</param>
    /// <returns>It; null where it is not in hand.</returns>
    public T? Find(string id) => _dropped.TryGetValue(id, out var dropped) ? dropped : Samples.GetValueOrDefault(id);

    /// <summary>Takes a document into the hand; one that is there already is not worked out again.</summary>
    /// <param name="document">Its text.</param>
    /// <returns>It, or what is wrong with it.</returns>
    public Taken<T> Take(string document)
    {
        var id = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(document)))[..HashLength];
        if (_dropped.TryGetValue(id, out var known))
        {
            return new Taken<T>(id, known, []);
        }

        var (said, faults) = read(document);
        if (said is not null && _dropped.TryAdd(id, said))
        {
            _order.Enqueue(id);
            while (_order.Count > Most && _order.TryDequeue(out var oldest))
            {
                _dropped.TryRemove(oldest, out _);
            }
        }

        return new Taken<T>(id, said, faults);
    }

    private static Dictionary<string, T> Load(string? folder, string ending, Func<string, (T? Said, IReadOnlyList<Fault> Faults)> read)
    {
        if (!Directory.Exists(folder))
        {
            return [];
        }

        var samples =
            from path in Directory.EnumerateFiles(folder, "*" + ending).Order(StringComparer.Ordinal)
            let said = read(File.ReadAllText(path)).Said
            where said is not null
            select (Id: Path.GetFileName(path)[..^ending.Length], said);
        return samples.ToDictionary(s => s.Id, s => s.said, StringComparer.Ordinal);
    }
}
