namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>Writes one line of the catalogue so that the table reads like a table.</summary>
internal sealed record FigureRow
{
    private FigureRow(Measure measure, CatalogueEntry entry)
    {
        Measure = measure;
        Entry = entry;
    }

    private Measure Measure { get; }

    private CatalogueEntry Entry { get; init; }

    /// <summary>Begins a line.</summary>
    /// <param name="key">Key, such as <c>engine.bore</c>.</param>
    /// <param name="label">The trade's name.</param>
    /// <param name="measure">Kind of quantity.</param>
    /// <param name="low">Smallest allowed value, as a text with its unit.</param>
    /// <param name="high">Largest allowed value.</param>
    /// <returns>The line so far.</returns>
    public static FigureRow Of(string key, string label, Measure measure, string low, string high)
    {
        var definition = new FigureDefinition(key, label, string.Empty, measure, Si(measure, low), Si(measure, high), string.Empty);
        return new FigureRow(measure, new CatalogueEntry { Definition = definition });
    }

    /// <summary>Says what the figure is and how it is measured.</summary>
    /// <param name="help">One sentence.</param>
    /// <returns>The line so far.</returns>
    public FigureRow Is(string help) => this with { Entry = Entry with { Definition = Entry.Definition with { Help = help } } };

    /// <summary>A default that the trade usually finds.</summary>
    /// <param name="value">The value as text.</param>
    /// <param name="why">Why this one.</param>
    /// <returns>The line so far.</returns>
    public FigureRow Usually(string value, string why) => By(OriginKind.CommonPractice, $"{Written(value)}, {why}", Constant(value));

    /// <summary>A default taken for granted.</summary>
    /// <param name="value">The value as text.</param>
    /// <param name="why">Why this one.</param>
    /// <returns>The line so far.</returns>
    public FigureRow Assumed(string value, string why) => By(OriginKind.Assumed, $"{Written(value)}, {why}", Constant(value));

    /// <summary>The default of the model itself, which stands there and nowhere else.</summary>
    /// <param name="si">The model's value, SI.</param>
    /// <returns>The line so far.</returns>
    public FigureRow OfTheModel(double si) =>
        By(OriginKind.Assumed, $"{FigureText.Show(Measure, si)}, taken for granted by the model; no workshop measures it", _ => si);

    /// <summary>A default computed from other figures.</summary>
    /// <param name="rule">The rule in words.</param>
    /// <param name="value">The rule.</param>
    /// <returns>The line so far.</returns>
    public FigureRow From(string rule, Func<FigureResolver, double> value) => By(OriginKind.Computed, rule, value);

    /// <summary>A band outside which the figure draws a warning.</summary>
    /// <param name="usual">The band for a car.</param>
    /// <returns>The line so far.</returns>
    public FigureRow Usual(Func<FigureResolver, UsualBand> usual) => this with { Entry = Entry with { Usual = usual } };

    /// <summary>A fixed band outside which the figure draws a warning.</summary>
    /// <param name="low">Lower end as text.</param>
    /// <param name="high">Upper end as text.</param>
    /// <returns>The line so far.</returns>
    public FigureRow Usual(string low, string high)
    {
        var band = new UsualBand(Si(Measure, low), Si(Measure, high), "what the trade usually finds");
        return Usual(_ => band);
    }

    /// <summary>Puts lines together as one part of the form.</summary>
    /// <param name="part">The part's name.</param>
    /// <param name="rows">The lines.</param>
    /// <returns>The lines of the catalogue.</returns>
    public static IReadOnlyList<CatalogueEntry> Part(string part, params IEnumerable<FigureRow> rows) =>
        [.. rows.Select(row => row.Entry with { Definition = row.Entry.Definition with { Part = part } })];

    private static double Si(Measure measure, string text) =>
        FigureText.Explain(measure, text, out var si) is { } problem
            ? throw new ArgumentException($"The catalogue's own '{text}': {problem.Problem}.", nameof(text))
            : si;

    private string Written(string value) => FigureText.Show(Measure, Si(Measure, value));

    private Func<FigureResolver, double> Constant(string value)
    {
        var si = Si(Measure, value);
        return _ => si;
    }

    private FigureRow By(OriginKind kind, string text, Func<FigureResolver, double> value) =>
        this with { Entry = Entry with { DefaultKind = kind, DefaultText = text, Default = value } };
}
