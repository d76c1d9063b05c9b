using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Cars.Text;

namespace Tickover.Workshop.Cars.Writing;

/// <summary>Generates the JSON Schema of a car document.</summary>
/// <remarks>The schema holds names, forms and units; ranges and contradictions are for the reader, which says what to do about them.</remarks>
internal static class CarSchema
{
    private const string NumberPattern = @"^\s*[+\-−]?(\d+([.,]\d*)?|[.,]\d+|(\d+\s+)?\d+/\d+)([eE][+\-]?\d{1,3})?";

    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Generates it.</summary>
    /// <returns>JSON text with a final newline.</returns>
    public static string Generate()
    {
        var root = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Car document",
            ["description"] = "An engine, its carburettors and the day; see docs/car-document.md. Ranges and contradictions are checked by the reader.",
        };
        Fill(root, Root(), ["format", "name", "engine", "carburettors"]);
        root["$defs"] = Definitions();
        return root.ToJsonString(Layout) + "\n";
    }

    private static JsonObject Root() => new()
    {
        ["format"] = new JsonObject { ["const"] = DocumentForm.Format },
        ["name"] = Text("The car's name."),
        ["note"] = Note(),
        ["engine"] = Engine(),
        ["fuel"] = Text("Fuel grade, such as E5; a pure fuel by name."),
        ["ambient"] = Object(Figures(FigureCatalogue.Ambient)),
        ["manifold"] = new JsonObject { ["enum"] = new JsonArray(DocumentForm.SeparateManifold, DocumentForm.SharedManifold), ["description"] = "Whether cylinders share their barrels." },
        ["barrels"] = Object(Settings()),
        ["carburettors"] = List(Carburettor(), 1),
    };

    private static JsonObject Engine()
    {
        var members = new JsonObject
        {
            ["layout"] = Text("Layout in words, such as \"90° V8\"."),
            ["cylinders"] = new JsonObject { ["type"] = "integer", ["minimum"] = 1, ["maximum"] = DocumentForm.MostCylinders },
            ["firingOrder"] = Cylinders("Numbers of the cylinders in order of firing."),
            ["firingAngles"] = List(Reference(Measure.Angle), 1),
            ["banks"] = List(Cylinders("Cylinders of one bank."), 1),
        };
        foreach (var (name, schema) in Figures(FigureCatalogue.Engine).ToArray())
        {
            members[name] = schema?.DeepClone();
        }

        var required = FigureCatalogue.Engine.Where(e => e.DefaultKind is null).Select(e => e.Name);
        return Object(members, ["cylinders", .. required]);
    }

    private static JsonObject Carburettor()
    {
        var barrel = Settings();
        barrel["feeds"] = Cylinders("Cylinders this barrel feeds.");
        var carburettor = Settings();
        carburettor["name"] = Text("Where it sits, such as \"front\".");
        carburettor["barrels"] = List(Object(barrel), 1);
        return Object(carburettor, ["barrels"]);
    }

    private static JsonObject Settings()
    {
        var settings = new JsonObject
        {
            ["emulsionTube"] = Text("Name of the emulsion tube."),
            ["emulsionHoles"] = List(Text($"A row: {HoleText.RowForm}."), 0, HoleText.Most),
            ["progressionHoles"] = List(Text($"A hole: {HoleText.HoleForm}."), 0, HoleText.Most),
        };
        foreach (var (name, schema) in Figures(FigureCatalogue.Barrel).ToArray())
        {
            settings[name] = schema?.DeepClone();
        }

        return settings;
    }

    private static JsonObject Figures(IEnumerable<CatalogueEntry> entries)
    {
        var members = new JsonObject { ["note"] = Note() };
        foreach (var entry in entries)
        {
            var figure = Reference(entry.Definition.Measure);
            figure["description"] = $"{entry.Definition.Label}: {entry.Definition.Help} Allowed: {entry.AllowedText}. {Default(entry)}";
            members[entry.Name] = figure;
        }

        return members;
    }

    private static string Default(CatalogueEntry entry) => entry.DefaultKind is null ? "Must be given." : $"Default: {entry.DefaultText}.";

    private static JsonObject Definitions()
    {
        var definitions = new JsonObject();
        foreach (var measure in Enum.GetValues<Measure>())
        {
            var units = MeasureUnits.Of(measure);
            var bare = measure is Measure.JetBore or Measure.Ratio or Measure.Turns or Measure.Count;
            definitions[NameOf(measure)] = new JsonObject
            {
                ["description"] = FigureText.Form(measure),
                ["type"] = bare ? new JsonArray("number", "string") : "string",
                ["pattern"] = bare ? NumberPattern : NumberPattern + @"\s*[^\s\d]",
                ["examples"] = new JsonArray(units is null ? "2" : $"3,5 {units.Written.First()}"),
            };
        }

        return definitions;
    }

    private static JsonObject Reference(Measure measure) => new() { ["$ref"] = $"#/$defs/{NameOf(measure)}" };

    private static string NameOf(Measure measure) => JsonNamingPolicy.CamelCase.ConvertName(measure.ToString());

    private static JsonObject Text(string description) =>
        new() { ["type"] = "string", ["minLength"] = 1, ["maxLength"] = DocumentForm.LongestText, ["description"] = description };

    private static JsonObject Note() => new() { ["type"] = "string", ["description"] = "Anything worth remembering; not read." };

    private static JsonObject Cylinders(string description) => new()
    {
        ["type"] = "array",
        ["items"] = new JsonObject { ["type"] = "integer", ["minimum"] = 1, ["maximum"] = DocumentForm.MostCylinders },
        ["uniqueItems"] = true,
        ["description"] = description,
    };

    private static JsonObject List(JsonObject items, int fewest, int most = DocumentForm.MostCylinders) =>
        new() { ["type"] = "array", ["minItems"] = fewest, ["maxItems"] = most, ["items"] = items };

    private static JsonObject Object(JsonObject members, params IEnumerable<string> required)
    {
        var schema = new JsonObject();
        Fill(schema, members, required);
        return schema;
    }

    private static void Fill(JsonObject schema, JsonObject members, IEnumerable<string> required)
    {
        schema["type"] = "object";
        var names = required.Select(n => (JsonNode)n).ToArray();
        if (names.Length > 0)
        {
            schema["required"] = new JsonArray(names);
        }

        schema["additionalProperties"] = false;
        schema["properties"] = members;
    }
}
