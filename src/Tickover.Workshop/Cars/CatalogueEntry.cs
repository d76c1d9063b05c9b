using Tickover.Workshop.Cars.Catalogue;

namespace Tickover.Workshop.Cars;

/// <summary>One line of the catalogue: what a figure is, and what stands in for it where the document says nothing.</summary>
public sealed record CatalogueEntry
{
    /// <summary>What the figure is.</summary>
    public required FigureDefinition Definition { get; init; }

    /// <summary>Origin of the default; null where the document must give the figure.</summary>
    public OriginKind? DefaultKind { get; init; }

    /// <summary>The default in words, such as "1.8 × the stroke"; empty where the figure must be given.</summary>
    public string DefaultText { get; init; } = string.Empty;

    /// <summary>The default, SI.</summary>
    internal Func<FigureResolver, double>? Default { get; init; }

    /// <summary>What is usual for this car; null where nothing is.</summary>
    internal Func<FigureResolver, UsualBand>? Usual { get; init; }

    /// <summary>The name in the document: the last part of the key.</summary>
    public string Name => Definition.Key[(Definition.Key.LastIndexOf('.') + 1)..];

    /// <summary>The allowed range as a person reads it.</summary>
    public string AllowedText
    {
        get
        {
            var measure = Definition.Measure;
            var low = FigureText.Show(measure, Definition.MinimumSi);
            return measure == Measure.JetBore
                ? $"{low} to {FigureText.Show(measure, Definition.MaximumSi)} (1/100 mm)"
                : $"{low} to {FigureText.Show(measure, Definition.MaximumSi)}";
        }
    }
}
