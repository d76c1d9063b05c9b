namespace Tickover.Workshop.JetChoice;

/// <summary>Jets, chokes and tubes in stock.</summary>
public sealed class JetShelf
{
    private readonly Dictionary<(string Part, double Size), int> _stock;

    /// <summary>Makes a shelf.</summary>
    /// <param name="stock">How many there are of each size, by the part's name in documents and the number of its size.</param>
    /// <param name="tubes">Emulsion tubes.</param>
    public JetShelf(IEnumerable<KeyValuePair<(string Part, double Size), int>> stock, IReadOnlyList<EmulsionTubeChoice>? tubes = null)
    {
        _stock = stock.GroupBy(s => s.Key, s => s.Value).ToDictionary(g => g.Key, g => g.Sum());
        Tubes = tubes ?? [];
    }

    /// <summary>Emulsion tubes in stock.</summary>
    public IReadOnlyList<EmulsionTubeChoice> Tubes { get; }

    /// <summary>All sizes in stock, by part and size.</summary>
    public IReadOnlyList<(string Part, double Size, int Count)> Stock => [.. _stock.Select(s => (s.Key.Part, s.Key.Size, s.Value)).OrderBy(s => s.Part, StringComparer.Ordinal).ThenBy(s => s.Size)];

    /// <summary>How many there are of a size.</summary>
    /// <param name="part">The part.</param>
    /// <param name="size">Its size, in the number's own unit.</param>
    /// <returns>The number, zero where there is none.</returns>
    public int Count(JetPart part, double size)
    {
        ArgumentNullException.ThrowIfNull(part);
        return _stock.GetValueOrDefault((part.Name, size));
    }

    /// <summary>Sizes of which there are enough.</summary>
    /// <param name="part">The part.</param>
    /// <param name="wanted">How many are wanted of one size.</param>
    /// <returns>The sizes, rising.</returns>
    public IReadOnlyList<double> Enough(JetPart part, int wanted)
    {
        ArgumentNullException.ThrowIfNull(part);
        return [.. _stock.Where(s => string.Equals(s.Key.Part, part.Name, StringComparison.Ordinal) && s.Value >= wanted).Select(s => s.Key.Size).Order()];
    }
}
