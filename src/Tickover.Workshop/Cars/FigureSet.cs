using System.Collections;

namespace Tickover.Workshop.Cars;

/// <summary>The figures of an engine, a barrel or the day, by key, in the order of the form.</summary>
public sealed class FigureSet : IReadOnlyCollection<Figure>
{
    private readonly List<Figure> _figures;
    private readonly Dictionary<string, Figure> _byKey;

    /// <summary>Collects figures.</summary>
    /// <param name="figures">The figures, each key once.</param>
    public FigureSet(IEnumerable<Figure> figures)
    {
        _figures = [.. figures];
        _byKey = _figures.ToDictionary(f => f.Definition.Key, StringComparer.Ordinal);
    }

    /// <inheritdoc/>
    public int Count => _figures.Count;

    /// <summary>The figure with a key.</summary>
    /// <param name="key">A key of the catalogue, such as <c>barrel.choke</c>.</param>
    /// <returns>The figure.</returns>
    public Figure this[string key] => _byKey[key];

    /// <summary>The SI value of the figure with a key.</summary>
    /// <param name="key">A key of the catalogue.</param>
    /// <returns>The value in SI.</returns>
    public double Si(string key) => _byKey[key].Si;

    /// <inheritdoc/>
    public IEnumerator<Figure> GetEnumerator() => _figures.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
