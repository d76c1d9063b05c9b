using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Carrying;

/// <summary>JSON Schemas (draft 2020-12) of what an export holds, made from the types themselves.</summary>
public static class RecordSchemas
{
    private const string Draft = "https://json-schema.org/draft/2020-12/schema";
    private const string Identifier = "^[0-9a-f]{32}$";

    /// <summary>All schemas by the name of their file, each with a final newline.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = Make();

    private static SortedDictionary<string, string> Make()
    {
        var schemas = new SortedDictionary<string, string>(StringComparer.Ordinal)
        {
            ["record-manifest.schema.json"] = Text("The manifest of an export", Of(typeof(ExportManifest), Form.Json)),
            ["record-journal.schema.json"] = Text("The journal of a record", Array(Of(typeof(CarriedAct), RecordKinds.Json))),
        };
        foreach (var kind in RecordKinds.All)
        {
            schemas[$"record-{kind.Name}.schema.json"] = Text($"Items of the kind {kind.Name}", Array(Of(kind, RecordKinds.Json)));
        }

        return schemas;
    }

    private static JsonNode Of(Type type, JsonSerializerOptions options) =>
        options.GetJsonSchemaAsNode(type, new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true, TransformSchemaNode = Own });

    private static JsonObject Array(JsonNode items) => new() { ["type"] = "array", ["items"] = items };

    // What is written by converters of our own, which the exporter cannot look into.
    private static JsonNode Own(JsonSchemaExporterContext context, JsonNode schema)
    {
        var type = Nullable.GetUnderlyingType(context.TypeInfo.Type) ?? context.TypeInfo.Type;
        var isNull = type != context.TypeInfo.Type;
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Id<>))
        {
            return new JsonObject { ["type"] = Types("string", isNull), ["pattern"] = Identifier };
        }

        return type == typeof(Place) ? new JsonObject { ["type"] = Types("string", isNull) }
            : type == typeof(decimal) ? new JsonObject { ["type"] = Types("number", isNull) }
            : type == typeof(JsonElement) ? new JsonObject { ["type"] = isNull ? Types("object", isNull) : "object" }
            : schema;
    }

    private static JsonNode Types(string type, bool isNull) => isNull ? new JsonArray(type, "null") : type;

    private static string Text(string title, JsonNode schema)
    {
        var whole = new JsonObject { ["$schema"] = Draft, ["title"] = title };
        foreach (var (name, value) in schema.AsObject())
        {
            whole[name] = value?.DeepClone();
        }

        return whole.ToJsonString(Form.Json) + "\n";
    }
}
