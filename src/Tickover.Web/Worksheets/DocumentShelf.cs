using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;

namespace Tickover.Web.Worksheets;

/// <summary>Sample documents of a kind, and those dropped last, while the server runs; the same document has the same address again.</summary>
/// <typeparam name="T">What a document says, worked out.</typeparam>
/// <param name="folder">Folder of the samples; null where there are none.</param>
/// <param name="ending">How their files' names end.</param>
/// <param name="read">Reads a document; null where it cannot be used.</param>
public sealed class DocumentShelf<T>(string? folder, string ending, Func<string, T?> read)
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

    /// <summary>Takes one into the hand.</summary>
    /// <param name="document">Its text.</param>
    /// <param name="said">What it says.</param>
    /// <returns>Its name in the address.</returns>
    public string Take(string document, T said)
    {
        var id = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(document)))[..HashLength];
        if (_dropped.TryAdd(id, said))
        {
            _order.Enqueue(id);
            while (_order.Count > Most && _order.TryDequeue(out var oldest))
            {
                _dropped.TryRemove(oldest, out _);
            }
        }

        return id;
    }

    private static Dictionary<string, T> Load(string? folder, string ending, Func<string, T?> read)
    {
        if (!Directory.Exists(folder))
        {
            return [];
        }

        var samples =
            from path in Directory.EnumerateFiles(folder, "*" + ending).Order(StringComparer.Ordinal)
            let said = read(File.ReadAllText(path))
            where said is not null
            select (Id: Path.GetFileName(path)[..^ending.Length], said);
        return samples.ToDictionary(s => s.Id, s => s.said, StringComparer.Ordinal);
    }
}
