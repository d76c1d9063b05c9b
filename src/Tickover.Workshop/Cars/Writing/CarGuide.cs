using System.Globalization;
using System.Text;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Cars.Text;

namespace Tickover.Workshop.Cars.Writing;

/// <summary>Generates the guide to the car document.</summary>
internal static class CarGuide
{
    private const string Example = """
        {
          "format": "tickover-car-1",
          "name": "Brackwater Dunlin",
          "engine": {
            "layout": "inline four", "cylinders": 4, "firingOrder": [1, 3, 4, 2],
            "bore": "85 mm", "stroke": "3 1/2 in", "peakPowerSpeed": "6000 rpm"
          },
          "fuel": "E5",
          "ambient": { "altitude": "120 m", "temperature": "18,5 °C" },
          "barrels": { "throttleBore": "45 mm", "choke": "36 mm", "mainJet": 145, "airCorrector": "2.00 mm" },
          "carburettors": [
            { "name": "front", "barrels": [{ "feeds": [1] }, { "feeds": [2], "idleJet": 55 }] },
            { "name": "rear", "mainJet": 150, "barrels": [{ "feeds": [3] }, { "feeds": [4] }] }
          ]
        }
        """;

    /// <summary>Generates it.</summary>
    /// <returns>Markdown with a final newline.</returns>
    public static string Generate()
    {
        var text = new StringBuilder();
        Opening(text);
        Frame(text);
        Tables(text, "Engine (\"engine\")", FigureCatalogue.Engine);
        Tables(text, "Day and place (\"ambient\")", FigureCatalogue.Ambient);
        Tables(text, "Barrels (\"barrels\", a carburettor, or one barrel)", FigureCatalogue.Barrel);
        Holes(text);
        Units(text);
        return text.ToString().ReplaceLineEndings("\n").TrimEnd() + "\n";
    }

    /// <summary>The example of the guide; a test reads it.</summary>
    /// <returns>A sound car document.</returns>
    public static string ExampleDocument() => Example.ReplaceLineEndings("\n");

    private static void Opening(StringBuilder text) => text.AppendLine(CultureInfo.InvariantCulture, $"""
        # The car document

        <!-- Generated from the catalogue of figures by the tests with TICKOVER_UPDATE=1; do not edit by hand. -->

        A car is described by one JSON file, by habit `NAME.car.json`. Only what is measured or read off a part needs to stand in it: everything
        else has a default, and each default says where it comes from. `docs/schemas/car.schema.json` is its JSON Schema.

        ```json
        {ExampleDocument()}
        ```

        - A quantity is a text with its unit; a decimal comma and a decimal point count alike, thousands are not grouped, inches may be fractions.
        - A jet may be numbered as the trade does, in 1/100 mm, with or without quotes: `145`, `"145"` and `"1.45 mm"` are the same. A flow number is not a size.
        - A barrel's settings stand once for all in `barrels`, for the barrels of one carburettor in the carburettor itself, or in one barrel; the narrowest holds.
        - Any object may carry a `note`. Strict JSON otherwise: no comments, no comma after the last member, at most 1 MiB, {SourceParser.DeepestNesting} levels.
        - All faults are reported at once, each with its place, what is allowed and what to do. What is allowed but rarely found draws a warning.

        """);

    private static void Frame(StringBuilder text) => text.AppendLine(CultureInfo.InvariantCulture, $"""
        ## The frame

        | Member | What | Default |
        |---|---|---|
        | `format` | the marker `"{DocumentForm.Format}"` | must be given |
        | `name` | the car's name, at most {DocumentForm.LongestText} letters | must be given |
        | `engine` | the engine, below | must be given |
        | `engine.layout` | layout in words, such as `"90° V8"` | inline |
        | `engine.cylinders` | their number, 1 to {DocumentForm.MostCylinders} | must be given |
        | `engine.firingOrder` | each cylinder once, as `[1, 3, 4, 2]` | must be given from four cylinders on |
        | `engine.firingAngles` | crank angles in firing order, from `"0°"` and below 720° | even firing |
        | `engine.banks` | the cylinders of each bank, as `[[1, 2], [3, 4]]` | two halves where the layout says V or flat, else one bank |
        | `fuel` | E0 to E100, or a pure fuel by name | E5 |
        | `ambient` | the day and the place, below | a standard day |
        | `manifold` | `"separate"` (one barrel for each cylinder) or `"shared"` | separate |
        | `barrels` | settings of all barrels, below | defaults |
        | `carburettors` | list of carburettors with `name`, settings, and the list `barrels` | must be given |
        | `carburettors[].barrels[].feeds` | cylinders the barrel feeds | in order where no barrel says it; all where the manifold is shared |

        """);

    private static void Tables(StringBuilder text, string heading, IReadOnlyList<CatalogueEntry> entries)
    {
        text.AppendLine(CultureInfo.InvariantCulture, $"## {heading}").AppendLine();
        foreach (var part in entries.GroupBy(e => e.Definition.Part, StringComparer.Ordinal))
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"### {part.Key}").AppendLine();
            text.AppendLine("| Member | Figure | Allowed | Default |").AppendLine("|---|---|---|---|");
            foreach (var entry in part)
            {
                var standsFor = entry.DefaultKind is null ? "must be given" : entry.DefaultText;
                text.AppendLine(CultureInfo.InvariantCulture, $"| `{entry.Name}` | {entry.Definition.Label}: {entry.Definition.Help} | {entry.AllowedText} | {standsFor} |");
            }

            text.AppendLine();
        }
    }

    private static void Holes(StringBuilder text) => text.AppendLine(CultureInfo.InvariantCulture, $"""
        ### Holes

        | Member | What | Allowed | Default |
        |---|---|---|---|
        | `emulsionTube` | name of the emulsion tube; its holes are what counts | a text | none |
        | `emulsionHoles` | list of rows {HoleText.RowForm} | {HoleText.RowRange}; at most {HoleText.Most} | {Catalogue.HoleDefaults.EmulsionOrigin.Note} |
        | `progressionHoles` | list of holes {HoleText.HoleForm} | {HoleText.HoleRange}; at most {HoleText.Most} | {Catalogue.HoleDefaults.ProgressionOrigin.Note} |

        """);

    private static void Units(StringBuilder text)
    {
        text.AppendLine("## Units").AppendLine().AppendLine("| Kind | Written as |").AppendLine("|---|---|");
        foreach (var measure in Enum.GetValues<Measure>())
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"| {Words(measure)} | {FigureText.Form(measure)} |");
        }
    }

    private static string Words(Measure measure) => measure switch
    {
        Measure.JetBore => "Jet bore",
        Measure.TemperatureDifference => "Difference of temperatures",
        _ => measure.ToString(),
    };
}
