using static Tickover.Workshop.Cars.Catalogue.FigureRow;

namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>Cylinders and crank.</summary>
internal static class EngineFigures
{
    private const double RodPerStroke = 1.8;

    public static IReadOnlyList<CatalogueEntry> Entries { get; } = Part(
        "Cylinders and crank",
        Of("engine.bore", "Bore", Measure.Length, "30 mm", "150 mm")
            .Is("Cylinder bore, measured with a bore gauge or from the maker's figures."),
        Of("engine.stroke", "Stroke", Measure.Length, "30 mm", "150 mm")
            .Is("Piston stroke, twice the crank throw."),
        Of("engine.rodLength", "Connecting rod", Measure.Length, "40 mm", "350 mm")
            .Is("Length of the connecting rod between the centres of its eyes.")
            .From("1.8 × the stroke, common practice", c => RodPerStroke * c.Si("engine.stroke")),
        Of("engine.compressionRatio", "Compression ratio", Measure.Ratio, "5", "14")
            .Is("Swept and clearance volume over clearance volume.")
            .Usually("9", "common for road engines on pump petrol"),
        Of("engine.peakPowerSpeed", "Speed at peak power", Measure.Speed, "1000 rpm", "12000 rpm")
            .Is("Engine speed at peak power, from the maker's figures or the dynamometer; many defaults rest on it.")
            .Usually("5500 rpm", "common for road engines")
            .Usual("3500 rpm", "8500 rpm"));

    /// <summary>Swept volume of one cylinder, m³.</summary>
    /// <param name="figures">The figures.</param>
    /// <returns>Volume, m³.</returns>
    public static double SweptVolume(FigureResolver figures) =>
        Math.PI / 4 * Math.Pow(figures.Si("engine.bore"), 2) * figures.Si("engine.stroke");
}
