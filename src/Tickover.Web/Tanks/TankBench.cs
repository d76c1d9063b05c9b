using System.Collections.Concurrent;
using Tickover.Workshop.Tanks;

namespace Tickover.Web.Tanks;

/// <summary>Tanks worked out, kept while the server runs: a slider asks for the same ones again and again.</summary>
internal sealed class TankBench
{
    private const int Most = 32;

    private readonly ConcurrentDictionary<string, Lazy<TankAnalysis?>> _known = new(StringComparer.Ordinal);

    /// <summary>The tanks of a document.</summary>
    /// <param name="document">The document.</param>
    /// <returns>The analysis; null where it has faults.</returns>
    public TankAnalysis? Of(string document)
    {
        if (_known.Count >= Most && !_known.ContainsKey(document))
        {
            _known.Clear();
        }

        return _known.GetOrAdd(document, text => new Lazy<TankAnalysis?>(() => TankDocument.Read(text).Set is { } set ? TankAnalyst.Of(set) : null)).Value;
    }
}
