using Tickover.Workshop.Cars.Catalogue;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>Says what is allowed but rarely found.</summary>
internal static class Unusual
{
    /// <summary>Warns about given figures outside what is usual for this car.</summary>
    /// <param name="entries">The lines of the catalogue.</param>
    /// <param name="figures">The figures.</param>
    /// <param name="faults">Where warnings go.</param>
    public static void Check(IEnumerable<CatalogueEntry> entries, FigureResolver figures, Faults faults)
    {
        foreach (var entry in entries)
        {
            var definition = entry.Definition;
            if (entry.Usual is null || !figures.IsGiven(definition.Key) || figures.IsDoubtful(definition.Key))
            {
                continue;
            }

            var band = entry.Usual(figures);
            var si = figures.Si(definition.Key);
            if (si < band.LowSi || si > band.HighSi)
            {
                var low = FigureText.Show(definition.Measure, band.LowSi);
                var high = FigureText.Show(definition.Measure, band.HighSi);
                faults.Warn(
                    figures.PathOf(definition.Key)!,
                    $"{FigureText.Show(definition.Measure, si)} is unusual for \"{definition.Label}\"",
                    $"usually {low} to {high}: {band.Because}",
                    "Check it on the part; it is used as it stands.");
            }
        }
    }
}
