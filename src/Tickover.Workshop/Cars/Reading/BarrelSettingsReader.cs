using System.Globalization;
using Tickover.Workshop.Cars.Text;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>Reads the settings of barrels at one level of the document.</summary>
internal static class BarrelSettingsReader
{
    /// <summary>Reads an object's settings.</summary>
    /// <param name="from">The object, or null where there is none.</param>
    /// <returns>The settings; what is faulty is reported and left out.</returns>
    public static BarrelSettings Read(ObjectReader? from)
    {
        var figures = FigureReader.Read(from, FigureCatalogue.Barrel);
        if (from is null)
        {
            return new BarrelSettings { Figures = figures };
        }

        var rows = Holes(from, "emulsionHoles", HoleText.Row, (HoleText.RowForm, HoleText.RowRange));
        var holes = Holes(from, "progressionHoles", HoleText.Hole, (HoleText.HoleForm, HoleText.HoleRange));
        return new BarrelSettings
        {
            Figures = figures,
            EmulsionTube = from.Text("emulsionTube", "E4"),
            EmulsionHoles = rows?.OrderBy(r => r.DepthMetres).ToArray(),
            EmulsionHolesPath = rows is null ? null : from.At("emulsionHoles"),
            ProgressionHoles = holes?.OrderBy(h => h.PositionMetres).ToArray(),
            ProgressionHolesPath = holes is null ? null : from.At("progressionHoles"),
        };
    }

    private static List<T>? Holes<T>(ObjectReader from, string name, Func<string, T?> parse, (string Form, string Range) allowed)
        where T : class
    {
        var items = from.List(name, $"[{allowed.Form[..(allowed.Form.IndexOf('"', 1) + 1)]}]");
        if (items is null)
        {
            return null;
        }

        if (items.Count > HoleText.Most)
        {
            from.Faults.Add(from.At(name), $"{items.Count} entries", $"at most {HoleText.Most}", "Put holes at the same place together.");
            return null;
        }

        var holes = new List<T>();
        for (var i = 0; i < items.Count; i++)
        {
            if (items[i].Kind == SourceKind.Text && parse(items[i].Text) is { } hole)
            {
                holes.Add(hole);
            }
            else
            {
                var path = string.Create(CultureInfo.InvariantCulture, $"{from.At(name)}[{i}]");
                from.Faults.Add(path, $"{items[i].Described} is not read", allowed.Range, $"Write {allowed.Form}.");
            }
        }

        return holes.Count == items.Count ? holes : null;
    }
}
