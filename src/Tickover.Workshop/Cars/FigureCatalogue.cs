using Tickover.Workshop.Cars.Catalogue;

namespace Tickover.Workshop.Cars;

/// <summary>The one table of every figure of a car: name, range, meaning and default.</summary>
/// <remarks>
/// Reading, faults, the form, the schema, the guide and the origin shown beside a figure all come from it.
/// The lines stand by part in the folder Catalogue.
/// </remarks>
public static class FigureCatalogue
{
    /// <summary>Figures of the engine, in the order of the form.</summary>
    public static IReadOnlyList<CatalogueEntry> Engine { get; } =
        [.. EngineFigures.Entries, .. ValveFigures.Entries, .. GasFigures.Entries];

    /// <summary>Figures of a barrel, in the order of the form.</summary>
    public static IReadOnlyList<CatalogueEntry> Barrel { get; } =
        [.. AirWayFigures.Entries, .. MainFigures.Entries, .. IdleFigures.Entries, .. PumpFigures.Entries];

    /// <summary>Figures of the day and the place.</summary>
    public static IReadOnlyList<CatalogueEntry> Ambient { get; } = AmbientFigures.Entries;

    private static Dictionary<string, CatalogueEntry> ByKey { get; } =
        Engine.Concat(Barrel).Concat(Ambient).ToDictionary(e => e.Definition.Key, StringComparer.Ordinal);

    /// <summary>The line of a key.</summary>
    /// <param name="key">A key such as <c>barrel.choke</c>.</param>
    /// <returns>The line, or null where there is none.</returns>
    public static CatalogueEntry? Find(string key) => ByKey.GetValueOrDefault(key);
}
