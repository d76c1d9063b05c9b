namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>Fills in what a document leaves out, each default from the figures it rests on.</summary>
/// <remarks>
/// A figure with a fault, or missing where it must be given, counts as doubtful with a stand-in value, and so does every
/// default that rests on it: contradictions are not reported about values that nobody gave. Not thread-safe.
/// </remarks>
internal sealed class FigureResolver
{
    private readonly IReadOnlyDictionary<string, GivenFigure> _given;
    private readonly Dictionary<string, double> _known = new(StringComparer.Ordinal);
    private readonly HashSet<string> _doubtful = new(StringComparer.Ordinal);
    private readonly Stack<string> _resolving = new();

    /// <summary>Resolves over what is given.</summary>
    /// <param name="given">Given figures by key.</param>
    /// <param name="place">Where the barrel stands.</param>
    public FigureResolver(IReadOnlyDictionary<string, GivenFigure> given, BarrelPlace place)
    {
        _given = given;
        Place = place;
    }

    /// <summary>Where the barrel stands; for the engine's own figures, its first barrel.</summary>
    public BarrelPlace Place { get; }

    /// <summary>Whether the document gives a figure.</summary>
    /// <param name="key">Key of the figure.</param>
    /// <returns>True where it stands in the document.</returns>
    public bool IsGiven(string key) => _given.ContainsKey(key);

    /// <summary>Where a figure stands in the document, or null where it is a default.</summary>
    /// <param name="key">Key of the figure.</param>
    /// <returns>The path.</returns>
    public string? PathOf(string key) => _given.GetValueOrDefault(key)?.Path;

    /// <summary>Whether a figure rests on something faulty.</summary>
    /// <param name="key">Key of the figure.</param>
    /// <returns>True where no conclusion may be drawn from it.</returns>
    public bool IsDoubtful(string key)
    {
        _ = Si(key);
        return _doubtful.Contains(key);
    }

    /// <summary>The value of a figure, given or by default.</summary>
    /// <param name="key">Key of the figure.</param>
    /// <returns>The value, SI, within the figure's range.</returns>
    public double Si(string key)
    {
        if (!_known.TryGetValue(key, out var value))
        {
            if (_resolving.Contains(key))
            {
                throw new InvalidOperationException($"The default of '{key}' rests on itself: {string.Join(" <- ", _resolving)}.");
            }

            _resolving.Push(key);
            value = Resolve(key);
            _resolving.Pop();
            _known.Add(key, value);
        }

        // Whatever is being worked out from a doubtful figure is doubtful too.
        if (_doubtful.Contains(key))
        {
            _doubtful.UnionWith(_resolving);
        }

        return value;
    }

    /// <summary>The figure with its origin.</summary>
    /// <param name="entry">The line of the catalogue.</param>
    /// <returns>The figure.</returns>
    public Figure ToFigure(CatalogueEntry entry)
    {
        var si = Si(entry.Definition.Key);
        return _given.TryGetValue(entry.Definition.Key, out var given)
            ? new Figure(entry.Definition, si, new Origin(OriginKind.Given, "Written in the car's document."), given.AsTyped)
            : new Figure(entry.Definition, si, new Origin(entry.DefaultKind ?? OriginKind.Assumed, DefaultNote(entry, si)), null);
    }

    private string DefaultNote(CatalogueEntry entry, double si)
    {
        var definition = entry.Definition;
        var end = si == definition.MinimumSi || si == definition.MaximumSi;
        var wanted = entry.Default!(this);
        return end && wanted != si ? $"{entry.DefaultText}; held to {FigureText.Show(definition.Measure, si)}, the end of what is allowed." : $"{entry.DefaultText}.";
    }

    private double Resolve(string key)
    {
        var entry = FigureCatalogue.Find(key) ?? throw new ArgumentException($"'{key}' is no figure of the catalogue.", nameof(key));
        var definition = entry.Definition;
        var given = _given.GetValueOrDefault(key);
        if (given is not null && double.IsFinite(given.Si))
        {
            return given.Si;
        }

        if (given is not null || entry.Default is null)
        {
            _doubtful.Add(key);
            return (definition.MinimumSi + definition.MaximumSi) / 2;
        }

        return Math.Clamp(entry.Default(this), definition.MinimumSi, definition.MaximumSi);
    }
}
